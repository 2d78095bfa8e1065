// The way to what a complaint about days is about: a field of the studio, of a formula, of the run or the order. What is
// the same in every run stands in a run's set-up, so that an order leads to one of its runs.
import { make_studio } from "../documents/beside";
import { file_of } from "../documents/editing";
import type { DocumentId } from "../documents/file_types";
import { open_formula } from "../documents/formula_opening";
import { named_from } from "../documents/names";
import { open_run } from "../documents/opening";
import { lines_of } from "../documents/order_lines";
import { open_up, state } from "../documents/state";
import { id_of } from "../forms/field";
import { reach, unfold } from "../forms/form_parts";
import { has_prices } from "../forms/money_said";
import { has_studio } from "../forms/shared";
import type { Complaint } from "../program/api";
import { show } from "./where";

type Of = "run" | "order";

/** Of the run that lies open; else of the one that it is about, or the first of the order. */
async function with_run(of: Of, about = ""): Promise<void> {
  if (of === "run" || !state.order) return;
  const { open } = state.order;
  const runs = lines_of(open.now).map(({ run }) => named_from(open.file, run));
  const wanted = runs.find((run) => is_same_file(run, about)) ?? runs[0];
  if (!runs.includes(state.run.file) || runs.some((run) => is_same_file(run, about))) await open_run(wanted, "set-up");
}

const is_same_file = (one: string, other: string): boolean =>
  one !== "" && (one === other || other.endsWith(`/${one}`));

/** After the view has led the keyboard to its title. */
const once_drawn = (act: () => void): void => void requestAnimationFrame(() => requestAnimationFrame(act));

/** The field of that place, or of what it lies in. */
function field_of(of: DocumentId, pointer: string): HTMLElement | undefined {
  for (let here = pointer; here; here = here.slice(0, here.lastIndexOf("/"))) {
    const found = document.getElementById(id_of(of, here));
    if (found) return found;
  }
  return undefined;
}

const to_studio = (fold: string, pointer: string): void => {
  open_up("set-up studio");
  unfold("studio", fold);
  void show("set-up");
  once_drawn(() => reach(field_of("studio", pointer)));
};

export async function to_making_days(of: Of): Promise<void> {
  await with_run(of);
  if (!has_studio()) await make_studio();
  to_studio("days", "/days/making/monday");
}

const all: DocumentId[] = ["order", "run", "pour", "pipe", "studio"];

export async function lead_to(of: Of, { file, field }: Pick<Complaint, "file" | "field">): Promise<void> {
  if (of === "order" && is_same_file(state.order!.open.file, file)) return reach(field_of("order", field));
  await with_run(of, file);
  const whose = all.find((one) => is_same_file(file_of(one)?.file ?? "", file));
  if (whose === "pour" || whose === "pipe") open_formula(whose);
  else if (whose === "studio")
    return to_studio(field.startsWith("/work") && has_prices() ? "money work" : "days", field);
  else if (field_of("run", field)) return reach(field_of("run", field));
  else void show("set-up");
  once_drawn(() => reach(field_of(whose ?? "run", field)));
}
