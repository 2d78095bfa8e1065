#include "records/as_of_now.h"

#include "records/database.h"
#include "records/records.h"

namespace brimwright::records {

struct AsOfNow::Open {
  explicit Open(SQLite::Database& connection) : transaction(connection) {}

  SQLite::Transaction transaction;
};

AsOfNow::AsOfNow(const Records& records) {
  told(records.path(), [&] { open_ = std::make_unique<Open>(records.database().connection()); });
}

AsOfNow::~AsOfNow() = default;

}  // namespace brimwright::records
