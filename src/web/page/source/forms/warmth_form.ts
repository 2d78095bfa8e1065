// How warm lye and fats are, as far as it is known; what follows from it stands on the lye shelf.
import { html, type TemplateResult } from "lit";
import type { Slot } from "../documents/file_types";
import { state } from "../documents/state";
import { field } from "./field";
import { folded, one_of, said_at } from "./form_parts";

const cooled_in = ["ice bath", "cold water", "fridge", "room"].map((one): [string, string] => [
  one,
  one === "room" ? "the room" : one,
]);

/** Every key of it may be left out. */
export function warmth_form(slot: Slot): TemplateResult {
  const here = `/${slot}/temperatures`;
  const warm = (name: string, label: string) =>
    field({ label, at: `${here}/${name}`, unit: state.units === "us" ? "°F" : "°C", optional: true, short: true });
  return folded({
    name: here,
    pointers: [here],
    summary: "How warm",
    body: () =>
      html` <p class="hint">What you leave blank is left out. The lye shelf tells what follows.</p>
        ${said_at("run", here)}
        <div class="row">
          ${warm("room_at", "Room and dry alkali")} ${warm("water_at", "Water")}
          ${field({ label: "Of the water, as ice", at: `${here}/ice_share`, unit: "%", optional: true, short: true })}
          ${warm("lye_used_at", "Lye when it is used")} ${warm("fats_at", "Fats")}
          ${warm("batter_below", "Batter must stay below")}
          ${one_of({
            label: "The lye cools in",
            at: `${here}/cooled_in`,
            answers: cooled_in,
            unsaid: "not given",
            optional: true,
          })}
        </div>`,
  });
}
