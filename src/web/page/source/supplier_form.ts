// What the label needs to know of a material: its INCI name or make-up, its allergens, and who says so.
import { html, type TemplateResult } from "lit";
import { add_button, change, id_at, item_buttons, list_at, said_at } from "./adding";
import { field, id_of, value_at } from "./field";

/** For a material of the run at this pointer. */
export function supplier_form(here: string, name: string): TemplateResult {
  return html`<details><summary>For the label</summary>
    ${inci(`${here}/inci`, name)}
    ${shares(`${here}/allergens`, `Allergen of ${name}`, "Add an allergen")}
    ${field({ label: "Supplier's document, with its date", at: `${here}/document`, optional: true })}</details>`;
}

function inci(here: string, name: string): TemplateResult {
  const said = value_at("run", here);
  const of_one = () => document.getElementById(id_of("run", here));
  if (!Array.isArray(said)) {
    const mix = () => change("a mixture", here, [{ name: typeof said === "string" ? said : "", share: "" }], () => document.getElementById(id_of("run", `${here}/0/name`)));
    return html`${field({ label: "INCI name", at: here, optional: true })}
      <button type="button" @click=${mix}>It is a mixture</button>`;
  }
  return html`<p class="hint">All that is in it, water too, until it adds to 100 %.</p>
    ${said_at(here)} ${shares(here, `INCI name in ${name}`, "Add what is in it")}
    <button type="button" @click=${() => change("one INCI name", here, undefined, of_one)}>It has one INCI name</button>`;
}

function shares(here: string, label: string, add: string): TemplateResult {
  return html`${list_at(here).map(
      (_, i) => html`<div class="row" id=${id_at(`${here}/${i}`, "item")}>
        ${field({ label: `${label}, ${i + 1}`, at: `${here}/${i}/name` })}
        ${field({ label: `Its share, ${i + 1}`, at: `${here}/${i}/share`, unit: "%", short: true })}
        ${item_buttons(here, i, `${label}, ${i + 1}`, false)}</div>`,
    )}
    ${add_button(here, add, { name: "", share: "" }, label)}`;
}
