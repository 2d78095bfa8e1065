#include "records/act.h"

#include "records/database.h"
#include "records/records.h"

namespace brimwright::records {

struct Act::Open {
  const std::string& path;
  SQLite::Transaction transaction;
};

Act::Act(Records& records, const std::string& id, const std::string& at, const std::string& what,
         const std::string& about) {
  auto& connection = records.database().connection();
  told(records.path(), [&] {
    open_ = std::unique_ptr<Open>(new Open{
        records.path(), SQLite::Transaction(connection, SQLite::TransactionBehavior::IMMEDIATE)});
    SQLite::Statement put(
        connection,
        "INSERT INTO act (id, at, what, about) VALUES (?, ?, ?, ?) ON CONFLICT (id) DO NOTHING");
    SQLite::bind(put, id, at, what, about);
    was_done_before_ = put.exec() == 0;
  });
}

Act::~Act() = default;

void Act::done() {
  told(open_->path, [&] { open_->transaction.commit(); });
}

}  // namespace brimwright::records
