// What the run would have her weigh now, beside what a batch was begun with.
import type { Vessel, WeighOutRow } from "../program/answers";

const batter_names = { pour: "Base", pipe: "Topping" };

interface Placed {
  row: WeighOutRow;
  vessel: Vessel;
}

const rows_of = (vessels: Vessel[]): Map<string, Placed> =>
  new Map(vessels.flatMap((vessel) => vessel.rows.map((row) => [row.key, { row, vessel }])));

/** "Olive oil 412 g, now 430 g", under the name of its batter where there are two. */
export function differences(begun: Vessel[], now: Vessel[]): string[] {
  const [before, after] = [rows_of(begun), rows_of(now)];
  const has_two = [...begun, ...now].some(({ batter }) => batter === "pipe");
  let batter: Vessel["batter"];
  const named = ({ row, vessel }: Placed) => {
    const is_told = !has_two || vessel.batter === batter; // by the one before
    batter = vessel.batter;
    return (
      (is_told || !batter ? "" : `${batter_names[batter]}: `) + row.name + (row.adding ? ` for ${row.adding}` : "")
    );
  };
  const changed = [...before].flatMap(([key, was]) => {
    const is = after.get(key)?.row;
    if (is?.shown === was.row.shown) return [];
    return [`${named(was)} ${was.row.shown}, ${is ? `now ${is.shown}` : "now left out"}`];
  });
  const added = [...after].filter(([key]) => !before.has(key)).map(([, is]) => `${named(is)}, now ${is.row.shown}`);
  return [...changed, ...added];
}
