#pragma once

#include "units/user_error.h"

#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace brimwright::service {

// What may be asked of the service, and what comes back.

/// Measure a mould file or a mesh. The options are as typed; `unit`, `up`, `role` and `on_board` go
/// with a mesh and are refused with a mould file, which says them itself. `text` is a mould's
/// document to be read in place of what is in `file`, which need not be there.
struct GaugeRequest {
  std::string file;
  std::optional<std::string> text = {};
  std::optional<std::string> unit, up, role;
  bool on_board = false;
  std::optional<std::string> cavity = {};  // the number of the one meant, where they differ
  std::vector<std::string> depths;
  // Make it fit: a volume, or a mass with the batter's density; `below_brim` is kept free.
  std::optional<std::string> fit_volume, fit_mass, density, below_brim;
  bool fit_depth_only = false;
  // What it takes to cast a mould round it.
  std::optional<std::string> cast_wall, cast_base, cast_density;
  bool cast_hung = false;
  // A pour into the propped mould.
  std::optional<std::string> prop, low_side, mark, pour;
  // How many embeds fit in what is poured: a mould file, whose cavity filled is the embed.
  std::optional<std::string> embed, cover, lying;
  // Files to write: the cavity as STL (scaled if it was made to fit), the filled cavity as GLB, a
  // drawing to scale as SVG.
  std::optional<std::string> write, glb, picture;
  bool cut_open = false;  // the GLB without its front half, capped
};

/// Plan a run; `sell` replaces the file's own number of pieces. `picture` is an SVG to write: the
/// poured cavity to scale, with its pour line and layers. `piece` are files of the whole piece, by
/// their ending: .svg from the front to scale, .glb with a named coloured part each, .stl. `label`
/// is the label's draft as plain text. `text` is a run to be planned as though it stood in `file`,
/// which need not be there. `weighed`, `added` and `purity` tell of lye already weighed, as typed
/// (lye_story_reading.h), in the batch of that number. With `explain` the answer is not the plan but
/// how its figures come about: the one of that name, or all where it is empty.
struct PlanRequest {
  std::string file;
  std::optional<std::string> text = {};
  std::optional<std::string> sell;
  std::optional<std::string> picture;
  std::vector<std::string> piece = {};
  bool cut_open = false;  // .glb and .stl without their front half, capped
  std::optional<std::string> label = {};
  std::vector<std::string> weighed = {}, added = {}, purity = {};
  std::optional<std::string> batch = {};
  std::optional<std::string> explain = {};
};

/// The sheet for the bench of a run. `html` and `pdf` are files to write; with neither, the
/// document is the HTML. `paper` is A4 or Letter; A4 if not said, save that HTML then prints on
/// either. `batch` is the number of the one batch it is for; without it there is a sheet for each
/// different batch, one after the other.
struct SheetRequest {
  std::string file;
  std::optional<std::string> text = {};
  std::optional<std::string> sell;
  std::optional<std::string> batch = {};
  std::optional<std::string> paper = {}, html = {}, pdf = {};
};

/// What ships: "moulds", "fats" or "tips", one of them by name, or everything in short.
struct ListRequest {
  std::optional<std::string> what;
  std::optional<std::string> name;
};

enum class Form { text, json };

struct Request {
  std::variant<GaugeRequest, PlanRequest, ListRequest, SheetRequest> what;
  Form form = Form::text;
};

/// Status 0: `document` answers. Status 1: `complaint` is one line of what wants mending, and the
/// document is empty; `wanting` has its parts. Status 2: a fault of this program, told in
/// `complaint`. Status 3, only where the library is to use nothing but remembered meshes: a mesh
/// has to be measured first, which may take long; ask again without that.
struct Reply {
  int status = 0;
  std::string document;
  std::string complaint;
  UserError::Parts wanting = {};
};

}  // namespace brimwright::service
