// brimwright-unite: solids into one, by CGAL, which goes round for ever over some.

#include "geometry/surface/parallel.h"
#include "helpers/unite/united.h"
#include "sandbox/helper_program.h"
#include "sandbox/job_bytes.h"

namespace {

namespace geometry = brimwright::geometry;
namespace helpers = brimwright::helpers;
namespace sandbox = brimwright::sandbox;

bool unite(std::string_view bytes, const sandbox::Send& send) {
  const auto solids = sandbox::from_bytes<std::vector<geometry::TriangleMesh>>(bytes);
  sandbox::BytesOut out(send);
  out(helpers::united(solids));
  return true;
}

}  // namespace

int main(int argc, char** argv) {
  geometry::start_no_threads();
  sandbox::be_a_helper(argc, argv, {"unite", sandbox::Reach::none, unite});
}
