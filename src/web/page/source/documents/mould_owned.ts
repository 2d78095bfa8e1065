// How many of a mould she owns, where the mould's own file says it; the studio is the place for that.
import { read_file, Refused } from "../program/api";
import { document_in, type Document } from "../program/json";
import { with_value } from "../program/pointer";
import { redraw } from "./drawing";
import { edit } from "./editing";
import { mould_kind } from "./kinds";
import { load, put_in, save } from "./open_file";
import { plan_soon } from "./planning";
import { asked_name } from "./run_names";
import { announce, state } from "./state";

const known = new Map<string, number | undefined>();

/** Such a file has changed. */
const forget_owned = (): void => known.clear();

const owned_of = (mould: Document | undefined): number | undefined =>
  typeof mould?.owned === "number" ? mould.owned : undefined;

/** Nothing as long as it is not read; the page is drawn again then. */
export function owned_in_file(mould: string): number | undefined {
  const file = asked_name(mould, state.files?.moulds);
  if (!known.has(file)) {
    known.set(file, undefined);
    void look_into(file);
  }
  return known.get(file);
}

async function look_into(file: string): Promise<void> {
  try {
    known.set(file, owned_of(document_in((await read_file(file)).text)));
    redraw();
  } catch (error) {
    if (!(error instanceof Refused)) throw error; // the plan says what is wrong with it
  }
}

/** To that place in the studio; out of the mould's file, where that is hers. */
export async function move_owned(mould: string, pointer: string): Promise<void> {
  const many = owned_in_file(mould);
  if (many === undefined) return;
  edit("studio", pointer, many);
  announce(`${many} kept in the studio`);
  await take_out(asked_name(mould, state.files?.moulds));
  plan_soon();
}

async function take_out(name: string): Promise<void> {
  const file = await load(mould_kind, name);
  if (file.shipped || file.theirs) return;
  put_in(file, with_value(file.now, "/owned", undefined));
  await save(file);
  forget_owned();
}
