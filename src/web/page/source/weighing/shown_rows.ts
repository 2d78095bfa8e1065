// A weight in her units, and how it comes about: by its place in the plan, or by what else is weighed.
import type { Batter, Vessel, WeighOutRow, Working } from "../program/answers";
import { unit_of, type Shown, type Units } from "../program/numbers";
import type { Weights } from "./at_bench";

/** Both texts are the program's; the one that the scale shows stands first. */
export function row_shown(units: Units, { shown, beside }: WeighOutRow): Shown {
  if (units === "both") return [shown, beside];
  const wanted = units === "us" ? "oz" : "g";
  return [unit_of(beside) === wanted ? beside : shown, ""];
}

/** Its place in the plan; or told here, where it is rows of another vessel together. */
export type How = { place: string } | { working: Working };

/** Nothing where nobody tells of it. */
export function how_of(weights: Weights, vessel: Vessel, row: WeighOutRow): How | undefined {
  if (vessel.vessel === "share" && !weights.batch.lye_pot && row.role === "lye_solution")
    return made_before(weights, vessel, row);
  const place = place_of(weights, vessel, row);
  return place === undefined ? undefined : { place };
}

function place_of({ batch, plan, place, vessels }: Weights, vessel: Vessel, row: WeighOutRow): string | undefined {
  switch (vessel.vessel) {
    case "fats":
    case "lye":
    case "batter":
      return ingredient_place(vessel, row, batch, place);
    case "layers":
      return layer_place(row, batch.pour.layers ?? [], `${place}.pour.layers`);
    case "dust":
      return at_name(row.name, batch.dust, `${place}.dust`);
    case "lye_pot":
      if (row.role === "water" || row.role === "ice") return `${place}.lye_pot.water_g`;
      return at_name(row.name, batch.lye_pot?.alkalis ?? [], `${place}.lye_pot.alkalis`);
    case "melt": {
      const melts = vessels.filter((one) => one.vessel === "melt");
      return melts.length === plan.decorations.length ? `decorations.${melts.indexOf(vessel)}.make_g` : undefined;
    }
    case "share":
      return share_place(vessel, row, batch, place);
  }
}

/** All of the lye solution that was made up before: what was weighed for it then. */
function made_before({ vessels }: Weights, vessel: Vessel, row: WeighOutRow): How | undefined {
  const lye = vessels.find((one) => one.vessel === "lye" && one.key === vessel.key.replace(/\.share$/, ".lye"));
  if (!lye) return undefined;
  const working: Working = {
    of: vessel.key,
    formula: "all of the lye solution = all that was weighed for it; what evaporated since is made up with plain water",
    with: lye.rows.map(({ name, shown }) => ({ name, value: shown, from: lye.title })),
    comes_to: row.shown,
    sources: [],
  };
  return { working };
}

const whipping_of = ({ key }: Vessel): number => Number(/^pipe\.(\d+)\./.exec(key)?.[1] ?? 1) - 1;

/** The base's share comes first, then one for each time that a topping is whipped. */
function share_place(vessel: Vessel, row: WeighOutRow, batch: Weights["batch"], place: string): string | undefined {
  const before = (batch.pipe?.whippings ?? []).slice(0, whipping_of(vessel));
  const share = vessel.batter === "pipe" ? before.reduce((sum, { count }) => sum + count, 1) : 0;
  if (row.role === "lye_solution") return `${place}.lye_pot.shares.${share}.lye_g`;
  if (row.role === "water") return `${place}.lye_pot.shares.${share}.top_up_g`;
  return ingredient_place(vessel, row, batch, place, "lye");
}

function at_name(name: string, among: { name: string }[], place: string): string | undefined {
  const i = among.findIndex((one) => one.name === name);
  return i < 0 ? undefined : `${place}.${i}.g`;
}

function ingredient_place(
  vessel: Vessel,
  row: WeighOutRow,
  batch: Weights["batch"],
  place: string,
  into: string = vessel.vessel,
): string | undefined {
  const whipping = whipping_of(vessel);
  const [batter, its_place]: [Batter | undefined, string] =
    vessel.batter === "pipe"
      ? [batch.pipe?.whippings[whipping], `${place}.pipe.whippings.${whipping}`]
      : [batch.pour, `${place}.pour`];
  const i = (batter?.ingredients ?? []).findIndex(
    ({ name, goes_into, role }) =>
      goes_into === into && (name === row.name || (row.role === "ice" && role === "water")),
  );
  return i < 0 ? undefined : `${its_place}.ingredients.${i}.g`;
}

function layer_place(row: WeighOutRow, layers: Weights["batch"]["pour"]["layers"], place: string): string | undefined {
  const i = (layers ?? []).findIndex(({ name }) => name === (row.adding ?? row.name));
  if (i < 0 || !row.adding) return i < 0 ? undefined : `${place}.${i}.g`;
  return at_name(row.name, layers![i].colours, `${place}.${i}.colours`);
}
