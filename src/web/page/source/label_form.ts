// What the label needs to know of a decoration or a powder: INCI names, allergens and the document they are from.
import { html, type TemplateResult } from "lit";
import { add_to, asked, complaint_just_at, drop_from, list_at, part, text_at } from "./asking";
import { edit } from "./editing";
import { field, value_at } from "./field";

type Inci = "none" | "one name" | "composition";

function inci_said(here: string): Inci {
  const said = value_at("run", `${here}/inci`);
  return said === undefined ? "none" : Array.isArray(said) ? "composition" : "one name";
}

const blank_inci = (way: Inci) => (way === "none" ? undefined : way === "one name" ? "" : [{ name: "", share: "" }]);

/** `called` tells it from the others on the page. */
export function label_form(here: string, called: string): TemplateResult {
  const way = inci_said(here);
  const take = (chosen: Inci) => chosen !== way && edit(`${here}/inci`, blank_inci(chosen));
  const pointers = ["inci", "allergens", "document"].map((name) => `${here}/${name}`);
  return part(`${here} label`, "For the label", pointers, html`
    ${asked(`INCI of ${called}`, way === "one name" ? undefined : `${here}/inci`, way, [["none", "Not said"], ["one name", "One name"], ["composition", "A composition"]], take)}
    ${way === "one name" ? field({ label: "INCI name", at: `${here}/inci` }) : ""}
    ${way === "composition" ? shares(`${here}/inci`, "INCI name", "One more INCI name") : ""}
    <h4>Fragrance allergens in it</h4>
    ${shares(`${here}/allergens`, "Allergen", "Add an allergen")}
    ${complaint_just_at(`${here}/allergens`) ? html`<p class="complaint">${complaint_just_at(`${here}/allergens`)}</p>` : ""}
    ${field({ label: "Supplier's document, with its date", at: `${here}/document`, optional: true })}`);
}

function shares(list: string, label: string, more: string): TemplateResult {
  return html`${list_at(list).map(
      (_, i) => html`<div class="row shares">
        ${field({ label: `${label} ${i + 1}`, at: `${list}/${i}/name` })} ${field({ label: `Share ${i + 1}`, at: `${list}/${i}/share`, unit: "%", short: true })}
        <button type="button" class="drop" aria-label="Leave out ${text_at(`${list}/${i}/name`) || `${label} ${i + 1}`}" @click=${() => drop_from(list, label, i)}>×</button></div>`,
    )}
    <button type="button" @click=${() => add_to(list, label, { name: "", share: "" })}>${more}</button>`;
}
