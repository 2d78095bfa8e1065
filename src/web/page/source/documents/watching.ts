// Other tabs and programs may write any file at any time. Of one that lies open it is then asked which text is to stay;
// figures that rest on others are struck out at once, and asked for anew.
import type { OpenFile } from "./file_types";
import { read_formulas } from "./formulas";
import { measure_soon } from "./measuring";
import { half_written, look_at } from "./open_file";
import { forget_own_fats } from "./own_fats";
import { measure_own_moulds } from "./own_moulds";
import { plan_soon } from "./planning";
import { state, update } from "./state";
import { forget_own_tips } from "./tips";
import { changed_beside, open_formulas, strike, version_of } from "./versions_beside";

const pause_ms = 700;

let is_looking = false;

/** Looks again and again, for as long as the page is open. */
export function keep_looking(): void {
  if (is_looking) return;
  is_looking = true;
  const again = () =>
    void look().then(
      () => window.setTimeout(again, pause_ms),
      () => window.setTimeout(again, 3 * pause_ms), // nobody answers; whoever types is told so
    );
  again();
}

let look_now: Promise<void> | undefined;

export function look(): Promise<void> {
  look_now ??= look_once().finally(() => (look_now = undefined));
  return look_now;
}

async function look_once(): Promise<void> {
  for (const file of [state.run, state.mould?.open]) if (file) await look_at(file, version_of, () => undefined);
  if (!state.run.file) return;
  for (const formula of open_formulas()) await look_at_formula(formula);
  const [changed] = await changed_beside();
  if (changed !== undefined) await follow_change(changed);
}

async function look_at_formula(formula: OpenFile): Promise<void> {
  if (!(await look_at(formula, version_of, () => strike(formula.file)))) return;
  forget_own_fats();
  plan_soon();
}

async function follow_change(file: string): Promise<void> {
  strike(file);
  await half_written();
  forget_own_fats();
  forget_own_tips();
  update({ measured: undefined });
  measure_soon();
  measure_own_moulds();
  await read_formulas();
  plan_soon();
}
