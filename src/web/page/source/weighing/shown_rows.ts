// A weight in her units, and its place in the plan, which tells how it comes about.
import type { Batter, Vessel, WeighOutRow } from "../program/answers";
import { unit_of, type Shown, type Units } from "../program/numbers";
import type { Weights } from "./at_bench";

/** Both texts are the program's; the one that the scale shows stands first. */
export function row_shown(units: Units, { shown, beside }: WeighOutRow): Shown {
  if (units === "both") return [shown, beside];
  const wanted = units === "us" ? "oz" : "g";
  return [unit_of(beside) === wanted ? beside : shown, ""];
}

/** Nothing where the plan does not tell of it by itself. */
export function place_of({ batch, plan, place }: Weights, vessel: Vessel, row: WeighOutRow): string | undefined {
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
      if (row.role === "water") return `${place}.lye_pot.water_g`;
      return at_name(row.name, batch.lye_pot?.alkalis ?? [], `${place}.lye_pot.alkalis`);
    case "melt": {
      const nth = plan.decorations.length === 1 ? 0 : -1;
      return nth < 0 ? undefined : `decorations.${nth}.make_g`;
    }
    case "share":
      return undefined;
  }
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
): string | undefined {
  const whipping = Number(/^pipe\.(\d+)\./.exec(vessel.key)?.[1] ?? 1) - 1;
  const [batter, its_place]: [Batter | undefined, string] =
    vessel.batter === "pipe"
      ? [batch.pipe?.whippings[whipping], `${place}.pipe.whippings.${whipping}`]
      : [batch.pour, `${place}.pour`];
  const i = (batter?.ingredients ?? []).findIndex(
    ({ name, goes_into }) => name === row.name && goes_into === vessel.vessel,
  );
  return i < 0 ? undefined : `${its_place}.ingredients.${i}.g`;
}

function layer_place(row: WeighOutRow, layers: Weights["batch"]["pour"]["layers"], place: string): string | undefined {
  const i = (layers ?? []).findIndex(({ name }) => name === (row.adding ?? row.name));
  if (i < 0 || !row.adding) return i < 0 ? undefined : `${place}.${i}.g`;
  return at_name(row.name, layers![i].colours, `${place}.${i}.colours`);
}
