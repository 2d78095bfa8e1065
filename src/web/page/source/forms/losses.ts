// What is lost of a batter on its way into the pieces.
import type { TemplateResult } from "lit";
import type { Slot } from "../documents/file_types";
import { shared_field, type Shared } from "./shared";

interface Loss {
  name: string;
  label: string;
  unit: string;
  optional?: boolean;
}

const losses: Record<Slot, Loss[]> = {
  pour: [
    { name: "overpour", label: "Overpour, of what is in the pieces", unit: "%" },
    { name: "pot", label: "Left in the pot", unit: "g" },
    { name: "jugs", label: "Left in the jugs", unit: "g" },
    { name: "test_piece", label: "Test piece", unit: "g" },
  ],
  pipe: [
    { name: "bag", label: "Left in the bag", unit: "g" },
    { name: "bowl_and_whisk", label: "Left in bowl and whisk", unit: "g" },
    { name: "tip", label: "Left in the tip", unit: "g", optional: true },
    { name: "each_bag_change", label: "Lost at each bag change", unit: "g", optional: true },
  ],
};

const shared = (pointer: string): Shared => ({ run: pointer, studio: pointer });

export const losses_of = (slot: Slot): Shared => shared(`/losses/${slot}`);

/** `whose` batter it is, where there are two. */
export function loss_fields(slot: Slot, whose?: string): TemplateResult[] {
  return losses[slot].map(({ name, label, unit, optional }) =>
    shared_field(shared(`/losses/${slot}/${name}`), {
      label: whose ? `${whose}: ${label.toLowerCase()}` : label,
      unit,
      short: true,
      optional,
    }),
  );
}
