// Opening a run, and making a new one.
import { get, post, put, read_kept, Refused, type Document, type Files, type Kept } from "./api";
import { keep_looking } from "./beside";
import { read_formulas } from "./editing";
import { measure_soon } from "./measuring";
import type { CatalogueMould, Fat } from "./plan";
import { plan_now } from "./planning";
import {
  drop_net,
  free_name,
  is_copy_of,
  keep_net,
  left_in_net,
  save_now,
  save_soon,
  take_saved,
  text_of,
  watch,
} from "./saving";
import { changed, state } from "./state";

// Of the shipped runs, the one that has every lane.
const shown_first = "examples/spring_order.run.json";

export async function begin(): Promise<void> {
  state.files = await get<Files>("/api/files");
  try {
    await open_run(first_run(state.files));
  } catch (error) {
    // A run that cannot be read must not stand in the way of all others.
    state.fault = error instanceof Refused ? error.message : `The run opened last is no run any more: ${String(error)}`;
    state.view = "start";
    localStorage.removeItem("run");
  }
  // The figures stand; now what only helps to explain them.
  const [fats, moulds] = await Promise.all([
    post<{ fats: Fat[] }>("/api/list", { what: "fats" }),
    post<{ moulds: CatalogueMould[] }>("/api/list", { what: "moulds" }),
  ]);
  state.fats = fats.fats;
  state.catalogue = moulds.moulds;
  changed();
}

function first_run(files: Files): string {
  const last = localStorage.getItem("run");
  const known = (file: string | null) => files.runs.some((one) => one.file === file);
  if (files.open) return files.open;
  if (last && known(last)) return last;
  const own = files.runs.find((one) => !one.shipped);
  return own?.file ?? (known(shown_first) ? shown_first : (files.runs[0]?.file ?? ""));
}

export async function open_run(file: string): Promise<void> {
  if (!file) {
    state.view = "start";
    return changed();
  }
  if (state.saving.is === "waiting") await save_now();
  const kept = await read_kept(file);
  const run = JSON.parse(kept.text) as Document;
  take_saved(run);
  Object.assign(state, {
    view: "run",
    file,
    run,
    version: kept.version,
    shipped: kept.shipped ?? false,
    formulas: {},
    past: [],
    future: [],
    dangers: { run: [], apart: [] },
    changed_beside: undefined,
    fault: undefined,
    plan: undefined,
    batch: 0,
    complaint: undefined,
    typed: undefined,
    measured: undefined,
    saving: kept.shipped ? { is: "shipped" } : { is: "saved" },
  });
  localStorage.setItem("run", file);
  const copy = await finished_copy(file, run);
  if (copy) return open_run(copy);
  take_net(file, kept);
  const planned = plan_now();
  measure_soon();
  await Promise.all([planned, read_formulas()]);
  void watch();
  keep_looking();
  changed();
}

/** The copy of an example that was written just as the page was left, if it is what was typed. */
async function finished_copy(file: string, shipped: Document): Promise<string | undefined> {
  const net = left_in_net(file);
  if (!net?.copy || !state.files?.runs.some((one) => one.file === net.copy)) return undefined;
  const kept = await read_kept(net.copy);
  const typed = JSON.parse(net.text) as Document;
  if (JSON.stringify(typed) === JSON.stringify(shipped) || !is_copy_of(typed, JSON.parse(kept.text) as Document))
    return undefined;
  drop_net(file);
  return net.copy;
}

/** What was typed last time and never reached the file: taken up where the file is still the same. */
function take_net(file: string, kept: Kept): void {
  const net = left_in_net(file);
  if (!net) return;
  if (net.text === text_of(state.run)) return drop_net(file);
  const typed = JSON.parse(net.text) as Document;
  state.past.push({ run: state.run, formulas: {} });
  state.run = typed;
  if (net.version === kept.version || kept.shipped) {
    state.saving = { is: "waiting" };
    save_soon();
  } else {
    state.saving = { is: "conflict", file, version: kept.version, text: kept.text };
    keep_net();
  }
}

/** A plain file name made of what she calls it. */
export function file_name(name: string, ending: string): string {
  const stem =
    name
      .toLowerCase()
      .replaceAll(/[^a-z0-9]+/g, "_")
      .replace(/^_+|_+$/g, "")
      .slice(0, 60) || "mine";
  return stem + ending;
}

interface NewRun {
  name: string;
  mould: string;
  formula: string;
  cavities: number;
  deep_mm: number;
}

/** Losses and scales are those of the run that lay open: they belong to the studio more than to a mould. */
export async function make_run(wanted: NewRun): Promise<void> {
  const before = state.run;
  const losses = (before.losses ?? {}) as Document;
  const run: Document = {
    schema: "brimwright.run/1",
    name: wanted.name,
    note: `Losses, scales and spoilage were taken over from "${String(before.name)}": check them.`,
    sell: wanted.cavities,
    spoilage: before.spoilage ?? "0 %",
    pour: { mould: wanted.mould, formula: wanted.formula, line: { below_brim: wanted.deep_mm > 15 ? "5 mm" : "0 mm" } },
    losses: { pour: losses.pour ?? {} },
    scales: before.scales ?? {},
  };
  if (before.money) run.money = before.money;
  await put_new(file_name(wanted.name, ".run.json"), run);
}

async function put_new(name: string, run: Document): Promise<void> {
  for (let i = 0; i < 50; ++i) {
    const file = free_name(name, state.files!.runs);
    try {
      await put<Kept>("/api/run", { file, version: null, text: text_of(run) });
      state.files!.runs.push({ file, name: String(run.name), note: "", shipped: false });
      return await open_run(file);
    } catch (error) {
      if (!(error instanceof Refused) || error.status !== 409) throw error;
      state.files!.runs.push({ file, name: file, note: "", shipped: false }); // somebody else's
    }
  }
}
