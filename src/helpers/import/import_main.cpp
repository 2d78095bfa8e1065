// brimwright-import: mesh files of every kind but binary STL, by Assimp, which crashes on malformed
// ones. Its first bytes are the format, the others the file.

#include "helpers/import/assimp_import.h"
#include "sandbox/helper_program.h"
#include "sandbox/job_bytes.h"

namespace {

namespace helpers = brimwright::helpers;
namespace sandbox = brimwright::sandbox;

bool import(std::string_view bytes, const sandbox::Send& send) {
  sandbox::BytesIn in(bytes);
  brimwright::geometry::MeshFormat format{};
  in(format);
  const auto imported = helpers::import_by_assimp(in.left(), format);
  if (!imported) return false;
  sandbox::BytesOut out(send);
  out(*imported);
  return true;
}

}  // namespace

int main(int argc, char** argv) {
  sandbox::be_a_helper(argc, argv, {"import", sandbox::Reach::none, import});
}
