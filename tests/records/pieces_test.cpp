#include "records/pieces.h"

#include "begun.h"
#include "records/notes.h"
#include "scratch_folder.h"

#include <catch2/catch.hpp>

using namespace brimwright;
using namespace brimwright::records;
using What = PieceChange::What;

TEST_CASE("pieces are those noted as made, less rejects, and what became of them") {
  const ScratchFolder folder;
  auto records = Records::kept_in(folder.path());
  Batch batch;
  act(records, [&] {
    batch = begun(records, "bars", 24);
    const auto change = [&](What what, std::int64_t pieces, const std::string& order,
                            const std::string& whom) {
      change_pieces(records, {.batch = batch.id,
                              .what = what,
                              .pieces = pieces,
                              .day = "2026-12-01",
                              .of_order = order,
                              .of_order_name = whom});
    };
    change(What::sold, -6, "an id", "Harbour market");
    change(What::sold, -2, "", "harbour market");
    change(What::given, -1, "", "");
    change(What::spoilt, -3, "", "");
    change(What::counted, 2, "", "");
  });
  Notes notes;
  CHECK(!pieces_of(records, batch, notes).is_known);
  notes.all["pieces.made"] = {"24", ""};
  notes.all["pieces.rejected"] = {"4", ""};
  const PieceCount count = pieces_of(records, batch, notes);
  CHECK(count.is_known);
  // By hand: 24 - 4 - 8 - 1 - 3 + 2.
  CHECK(count.there() == 10);
  CHECK(with_notes(changed_pieces(records).at(batch.id), notes).there() == 10);
  CHECK(changes_of_order(records, "an id").size() == 1);
  CHECK(changes_of_order(records, "HARBOUR Market").size() == 2);
  const auto changes = changes_of_pieces(records, batch.id);
  REQUIRE(changes.size() == 5);
  CHECK(changes[3].what == What::spoilt);
  CHECK(changes[3].pieces == -3);
}
