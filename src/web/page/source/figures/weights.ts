// What is weighed, as it is shown: at her scale's step, and never more alkali than the scale is to read.
import type { Batter, Ingredient } from "../program/answers";
import { weight, type Rounded, type Shown, type Units } from "../program/numbers";

const is_lye = (one: Ingredient): boolean => one.goes_into === "lye";
const is_alkali = ({ role }: Ingredient): boolean => role === "alkali";

const towards = (one: Ingredient): Rounded => (is_alkali(one) ? "down" : "nearest");

export const shown_weight = (units: Units, one: Ingredient): Shown => weight(units, one, towards(one));

interface Placed {
  one: Ingredient;
  i: number; // its place among all of them
}

/** Water and all that is liquid stands first: alkali goes into water, never water onto alkali. */
export function for_lye(batter: Batter): Placed[] {
  const lye = batter.ingredients.map((one, i) => ({ one, i })).filter(({ one }) => is_lye(one));
  const is_water = ({ one }: Placed) => one.role === "water";
  const is_caustic = ({ one }: Placed) => is_alkali(one);
  return [
    ...lye.filter(is_water),
    ...lye.filter((each) => !is_water(each) && !is_caustic(each)),
    ...lye.filter(is_caustic),
  ];
}

export function for_batter(batter: Batter): Placed[] {
  return batter.ingredients.map((one, i) => ({ one, i })).filter(({ one }) => !is_lye(one));
}
