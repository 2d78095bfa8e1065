// What could make a soap that burns, as the last answers told: it stays until a newer answer takes it back.
import type { Plan } from "../program/answers";
import { wording, type Complaint } from "../program/api";
import { state, update, type Danger } from "./state";

/** Of the run that lies open, or of the formula that is tried in it by itself. */
export const tried_now = (): "run" | "apart" => (state.formulas.apart ? "apart" : "run");

const take = (dangers: Danger[]): void => update({ dangers: { ...state.dangers, [tried_now()]: dangers } });

/** A new answer: what it warns of takes the place of what was warned of before. */
export function take_dangers(plan: Plan): void {
  const dangers = plan.cautions.filter((one) => one.severity === "danger");
  take(
    dangers.map(({ text, topic, batter, batch_pieces }) => ({
      text,
      is_of_heat: topic === "heat",
      batter,
      batch_pieces,
    })),
  );
}

/** No answer, because the soap would be lye-heavy. Any other refusal says nothing for or against what stood before. */
export function take_refusal(complaint: Complaint): void {
  if (complaint.lye_heavy) take([{ text: wording(complaint), is_of_heat: false }]);
}
