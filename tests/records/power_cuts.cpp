#include "power_cuts.h"

#include "records/database.h"
#include "scratch_folder.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <array>

namespace brimwright {
namespace {

using records::Records;

constexpr std::array ways = {Left::all, Left::none, Left::records_only, Left::journal_only,
                             Left::half_of_last};

void check_cut(const AskedOfDisk& asked, std::size_t count, Left left, const LookAtCut& look) {
  const ScratchFolder folder;
  cut_off(asked.disk, count, left, asked.before, folder.path());
  const auto certain = std::count_if(asked.acknowledged.begin(), asked.acknowledged.end(),
                                     [&](std::size_t at) { return at <= count; });
  INFO("after " << count << " of " << asked.disk.size() << ", left " << static_cast<int>(left));
  const auto records = Records::in(folder.path());
  REQUIRE(records);
  auto& connection = records->database().connection();
  CHECK(connection.execAndGet("PRAGMA quick_check").getString() == "ok");
  look(*records, static_cast<std::size_t>(certain));
}

}  // namespace

AskedOfDisk asked_of_disk(const std::filesystem::path& folder, RememberingDisk::Under whom,
                          const WorkOnDisk& work) {
  AskedOfDisk asked{.before = files_in(folder)};
  std::erase_if(asked.before,
                [](const auto& file) { return !file.first.starts_with(records::file_name); });
  const RememberingDisk disk(whom);
  work(disk, [&] { asked.acknowledged.push_back(disk.acts().size()); });
  asked.disk = disk.acts();
  return asked;
}

std::size_t check_cuts(const AskedOfDisk& asked, std::size_t stride, const LookAtCut& look) {
  std::size_t states = 0, tried = 0;
  for (std::size_t count = 0; count <= asked.disk.size(); ++count)
    for (const Left left : ways)
      if (states++ % stride == 0) {
        check_cut(asked, count, left, look);
        ++tried;
      }
  return tried;
}

}  // namespace brimwright
