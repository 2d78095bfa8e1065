#include "records/batches.h"

#include "records/act.h"
#include "records/batch_code.h"
#include "records/batches_in_brief.h"
#include "records/content_hash.h"
#include "records/database.h"
#include "records/documents.h"
#include "records/plans.h"
#include "records/records.h"
#include "scratch_folder.h"

#include <catch2/catch.hpp>

using namespace brimwright;
using namespace brimwright::records;
using Catch::Matchers::Contains;

namespace {

constexpr auto moment = "2026-12-01T09:30:05+01:00";
const Place code_at{"command line", "--code"};

/// A studio's records with batches begun in them.
struct Studio {
  ScratchFolder folder;
  Records records = Records::kept_in(folder.path());
  int acts = 0;

  template <class Work>
  auto in_act(Work work) {
    Act act(records, std::to_string(++acts), moment, "try", "{}");
    auto result = work();
    act.done();
    return result;
  }

  Batch begun(const std::string& day, std::optional<std::string> code = {}, std::int64_t number = 1,
              const std::string& run = "file:may.run.json") {
    return in_act([&] {
      return begin_batch(records,
                         {.id = "b" + std::to_string(acts),
                          .run = run,
                          .run_file = "may.run.json",
                          .run_name = "May",
                          .number = number,
                          .begun_on = day,
                          .begun_at = moment,
                          .pieces = 24,
                          .program = "1.2.3",
                          .plan = "{\"pieces\": 24}",
                          .sources = {{.path = "may.run.json", .text = "{}"},
                                      {.path = "cup.stl", .sha256 = content_hash("solid")}},
                          .code = std::move(code)},
                         code_at);
    });
  }
  std::string reserved(const std::string& day, std::optional<std::string> code = {},
                       std::int64_t number = 1) {
    return in_act(
        [&] { return reserve_code(records, "file:may.run.json", number, day, code, code_at); });
  }
};

}  // namespace

TEST_CASE("a content's hash is SHA-256") {
  // FIPS 180-4's own examples (NIST, SHA256.pdf): one block, and two.
  CHECK(content_hash("abc") == "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
  CHECK(content_hash("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq") ==
        "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1");
  // Of nothing, and of a million times "a", as coreutils' sha256sum has them.
  CHECK(content_hash("") == "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
  CHECK(content_hash(std::string(1'000'000, 'a')) ==
        "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0");
}

TEST_CASE("batches in brief say what the batches do, and stand by day as the records have them") {
  Studio studio;
  studio.begun("2026-12-02");
  for (const char* code : {"rose B", "Rose a", "ROSE C", "aroma", "Zest", "_late", "Äpfel"})
    studio.begun("2026-12-01", code);
  studio.begun("2026-11-30", "zest 2", 3, "file:june.run.json");
  const std::vector<Batch> batches = records::batches(studio.records);
  const BatchesInBrief brief = batches_in_brief(studio.records);
  const std::vector<std::size_t> places = by_day(brief.all);
  REQUIRE(batches.size() == 9);
  REQUIRE(places.size() == batches.size());
  for (std::size_t i = 0; i < batches.size(); ++i) {
    const BatchInBrief& batch = brief.all[places[i]];
    CHECK(batch.id == batches[i].id);
    CHECK(batch.code == batches[i].code);
    CHECK(batch.number == batches[i].number);
    CHECK(batch.begun_on == batches[i].begun_on);
    CHECK(brief.plans[batch.plan] == batches[i].plan);
    CHECK(brief.sources[batch.sources] == batches[i].sources);
  }
  CHECK(brief.plans.size() == 1);
  const auto packed = packed_plans(studio.records, brief.plans);
  std::string plan;
  unpack(packed.at(0), studio.records, plan);
  CHECK(plan == plan_of(studio.records, batches.front()));
  TextPlaces unknown;
  unknown.place_of("none");
  CHECK_THROWS_WITH(packed_plans(studio.records, unknown), Contains("damaged"));
}

TEST_CASE("a batch is found as it was begun, with its plan and what that was made from") {
  Studio studio;
  const Batch begun = studio.begun("2026-12-01");
  CHECK(begun.code == "2026-12-01A");
  const auto found = batch_called(studio.records, "2026-12-01a");
  REQUIRE(found);
  CHECK(found->id == begun.id);
  CHECK(found->run_name == "May");
  CHECK(found->pieces == 24);
  CHECK(found->begun_at == moment);
  CHECK(plan_of(studio.records, *found) == "{\"pieces\": 24}");
  CHECK(sources_of(studio.records, *found) ==
        std::vector<Source>{{.path = "may.run.json", .text = "{}"},
                            {.path = "cup.stl", .sha256 = content_hash("solid")}});
  CHECK(!batch_called(studio.records, "2026-12-01B"));
}

TEST_CASE("the newest making of a batch is the one recorded last, whatever its day") {
  Studio studio;
  studio.begun("2026-12-02");
  const Batch later = studio.begun("2026-12-01");
  studio.begun("2026-12-03", {}, 2);
  CHECK(newest_batch(studio.records, "file:may.run.json", 1)->id == later.id);
  CHECK(!newest_batch(studio.records, "file:june.run.json", 1));
  std::vector<std::string> codes;
  for (const Batch& batch : batches(studio.records)) codes.push_back(batch.code);
  CHECK(codes == std::vector<std::string>{"2026-12-01A", "2026-12-02A", "2026-12-03A"});
  CHECK(batches_of(studio.records, "file:may.run.json").size() == 3);
  CHECK(batches_of(studio.records, "file:june.run.json").empty());
}

TEST_CASE("batches planned alike share one plan, and long ones are kept small") {
  Studio studio;
  for (int i = 0; i < 30; ++i) studio.begun("2026-12-01");
  auto& connection = studio.records.database().connection();
  CHECK(connection.execAndGet("SELECT count(*) FROM document").getInt() == 2);
  CHECK(batches(studio.records).back().code == "2026-12-01Z");
  CHECK(batch_called(studio.records, "2026-12-01AD"));  // the 30th: 26 letters, then AA to AD
  // A plan of 200 kB that says much the same over and over, as plans do.
  std::string plan;
  for (int i = 0; plan.size() < 200'000; ++i)
    plan += "{\"name\": \"Olive oil\", \"g\": " + std::to_string(i) + "},";
  const std::string hash = studio.in_act([&] { return keep_document(studio.records, plan); });
  CHECK(document(studio.records, hash) == plan);
  CHECK(connection.execAndGet("SELECT max(length(packed)) FROM document").getInt() < 40'000);
}

TEST_CASE("a frozen batch never changes, and is never removed") {
  Studio studio;
  studio.begun("2026-12-01");
  auto& connection = studio.records.database().connection();
  for (const char* column :
       {"id", "run", "run_file", "run_name", "begun_on", "begun_at", "program", "plan", "sources"})
    CHECK_THROWS_WITH(connection.exec("UPDATE batch SET " + std::string(column) + " = 'x'"),
                      Contains("a frozen batch never changes"));
  for (const char* column : {"number", "pieces", "act"})
    CHECK_THROWS_WITH(connection.exec("UPDATE batch SET " + std::string(column) + " = 7"),
                      Contains("a frozen batch never changes"));
  CHECK_THROWS_WITH(connection.exec("DELETE FROM batch"), Contains("never removed"));
  CHECK_THROWS_WITH(connection.exec("UPDATE document SET packed = x'00'"),
                    Contains("never changes"));
  CHECK_THROWS_WITH(connection.exec("DELETE FROM document"), Contains("FOREIGN KEY"));
  CHECK_THROWS_WITH(connection.exec("DELETE FROM code"), Contains("never given back"));
}

TEST_CASE("a code is given once, whoever had it before") {
  Studio studio;
  const Batch first = studio.begun("2026-12-01", "SOAP-7");
  CHECK_THROWS_WITH(studio.begun("2026-12-02", "soap-7"),
                    Contains("is the code of batch 1 of \"May\", begun on 2026-12-01"));
  const Batch renamed = studio.in_act(
      [&] { return with_code(studio.records, first, "SOAP-8", "2026-12-02", code_at); });
  CHECK(renamed.code == "SOAP-8");
  CHECK(batch_called(studio.records, "SOAP-8")->id == first.id);
  CHECK(!batch_called(studio.records, "SOAP-7"));
  CHECK_THROWS_WITH(studio.begun("2026-12-02", "SOAP-7"), Contains("was given to another batch"));
  CHECK(batches(studio.records).size() == 1);
}

TEST_CASE("a reserved code goes to the next making of its batch, and to no other") {
  Studio studio;
  CHECK(!reserved_code(studio.records, "file:may.run.json", 1));
  CHECK(studio.reserved("2026-12-01") == "2026-12-01A");
  CHECK(studio.reserved("2026-12-05") == "2026-12-01A");
  CHECK_THROWS_WITH(studio.reserved("2026-12-05", "other"), Contains("reserved for this batch"));
  CHECK(studio.begun("2026-12-01", {}, 2).code == "2026-12-01B");
  CHECK_THROWS_WITH(studio.begun("2026-12-01", "2026-12-01a", 2), Contains("another batch"));
  CHECK(studio.begun("2026-12-06").code == "2026-12-01A");
  CHECK(studio.begun("2026-12-06").code == "2026-12-06A");
  // Begun with another one, the reserved code waits for nothing any more, and is not given again.
  CHECK(studio.reserved("2026-12-07", "MAY/3") == "MAY/3");
  CHECK(studio.begun("2026-12-07", "MAY/4").code == "MAY/4");
  CHECK(!reserved_code(studio.records, "file:may.run.json", 1));
  CHECK_THROWS_WITH(studio.begun("2026-12-07", "MAY/3"), Contains("another batch"));
}

TEST_CASE("a code fits on a label") {
  CHECK(read_batch_code("  may  7/b ", code_at) == "may 7/b");
  for (const char* bad : {"", "  ", "a\nb", "a\tb", "a\x1b[31m", "Grün", "a:b",
                          "12345678901234567890123456789012345678901"})
    CHECK_THROWS_AS(read_batch_code(bad, code_at), UserError);
}

TEST_CASE("an act that does not come to its end begins no batch and gives no code") {
  Studio studio;
  {
    const Act left_off(studio.records, "x", moment, "begin", "{}");
    begin_batch(studio.records,
                {.id = "b",
                 .run = "r",
                 .run_file = "f",
                 .run_name = "n",
                 .begun_on = "2026-12-01",
                 .begun_at = moment,
                 .program = "1",
                 .plan = "{}"},
                code_at);
  }
  CHECK(batches(studio.records).empty());
  CHECK(studio.begun("2026-12-01").code == "2026-12-01A");
}
