// How warm lye and fats are, as far as it is known; what follows from it stands with the lye.
import { html, type TemplateResult } from "lit";
import type { Slot } from "../documents/file_types";
import { state } from "../documents/state";
import { folded, one_of, said_at } from "./form_parts";
import { has_studio, place_of, shared_field, who_says, type Shared } from "./shared";

const cooled_in = ["ice bath", "cold water", "fridge", "room"].map((one): [string, string] => [
  one,
  one === "room" ? "the room" : one,
]);

const warmth_of = (slot: Slot): Shared => ({ run: `/${slot}/temperatures`, studio: `/temperatures/${slot}` });

/** Every key of it may be left out. */
export function warmth_form(slot: Slot): TemplateResult {
  const { run } = warmth_of(slot);
  return folded({
    name: run,
    pointers: [run],
    summary: "How warm",
    body: () =>
      html` <p class="hint">
          ${has_studio() ? "Your studio says what is usual. " : ""}What you leave blank is left out.
        </p>
        ${who_says("How warm", [warmth_of(slot)])} ${said_at("run", run)} ${warmth_fields(slot)}`,
  });
}

function warmth_fields(slot: Slot): TemplateResult {
  const { run, studio } = warmth_of(slot);
  const place = (key: string): Shared => ({ run: `${run}/${key}`, studio: `${studio}/${key}` });
  const degrees = state.units === "us" ? "°F" : "°C";
  const warm = (key: string, label: string, unit = degrees) =>
    shared_field(place(key), { label, unit, optional: true, takes_part: true, short: true });
  const cooling = place("cooled_in");
  return html`<div class="row">
    ${warm("room_at", "Room and dry alkali")} ${warm("water_at", "Water")}
    ${warm("ice_share", "Of the water, as ice", "%")} ${warm("lye_used_at", "Lye when it is used")}
    ${warm("fats_at", "Fats")} ${warm("batter_below", "Batter must stay below")}
    ${one_of({
      label: "The lye cools in",
      ...place_of(cooling),
      answers: cooled_in,
      unsaid: "not given",
      optional: true,
    })}
  </div>`;
}
