// The kinds of files that can lie open.
import type { Kind } from "./file_types";
import { has_part, without_blanks } from "./mould_text";
import { file_name, last_part } from "./names";

export const run_kind: Kind = {
  name: "run",
  list: "runs",
  called: "name",
  has_id: true,
  new_name: ({ shipped, file, now }) => (shipped ? last_part(file) : file_name(String(now.name), ".run.json")),
  written: (now) => now,
  is_begun: () => true,
};

export const order_kind: Kind = {
  name: "order",
  list: "orders",
  called: "for",
  has_id: true,
  new_name: ({ now }) => file_name(String(now.for ?? "order"), ".order.json"),
  written: (now) => now,
  is_begun: () => true,
};

export const formula_kind: Kind = {
  name: "formula",
  list: "formulas",
  called: "name",
  has_id: false,
  new_name: ({ shipped, file, now }) => (shipped ? last_part(file) : file_name(String(now.name), ".formula.json")),
  written: (now) => now,
  is_begun: () => true,
};

const beside = (name: "studio" | "fats" | "tips", list: Kind["list"], called?: Kind["called"]): Kind => ({
  name,
  list,
  called,
  has_id: false,
  new_name: ({ file }) => last_part(file),
  written: (now) => now,
  is_begun: () => true,
});

export const studio_kind = beside("studio", "studios", "name");
export const fats_kind = beside("fats", "fats");
export const tips_kind = beside("tips", "tips", "title");

/** A copy of one of the catalogue has a name of its own. */
export const mould_kind: Kind = {
  name: "mould",
  list: "moulds",
  called: "name",
  has_id: false,
  new_name: ({ now }) => file_name(String(now.name), ".json"),
  written: (now) => ({ ...without_blanks(now), name: String(now.name ?? "").trim() }),
  is_begun: (now) => has_part(now, "shape") || has_part(now, "mesh"),
};
