// What she is about to record, as a form: its fields, a question where the program asks one, and the act.
import { html, nothing, type TemplateResult } from "lit";
import { close_form, confirm, form_of, record, see } from "../documents/stock";
import type { StockActKind, StockForm } from "../documents/stock_types";
import { state } from "../documents/state";
import { go_on, to_id } from "../forms/form_parts";
import { wording } from "../program/api";
import { days_in_words } from "../program/numbers";
import type { StockAct } from "../program/stock";
import { seen_now } from "./seen";
import { id_of } from "./form_field";

interface ActForm {
  form: StockForm;
  title: string;
  act_words: string; // on the button
  fields: TemplateResult;
  names: string[]; // of its fields: what is said of another stands beneath them all
  act: () => Omit<StockAct, "act"> | undefined; // nothing as long as something is to be said first
}

export const form_id = ({ kind, of }: Pick<StockForm, "kind" | "of">): string =>
  `shelf-form-${`${kind}-${of}`.replaceAll(/[^\w]+/g, "-")}`;

export function act_form(one: ActForm): TemplateResult {
  const { form, title, act_words, fields } = one;
  const id = form_id(form);
  const leave = () => {
    close_form(form);
    go_on(to_opener(form));
  };
  return html`<form
    class="shelf-act"
    aria-labelledby=${id}
    @submit=${(event: Event) => {
      event.preventDefault();
      void done(one);
    }}
  >
    <p class="part-title" id=${id} tabindex="-1">${title}</p>
    ${fields} ${beneath(one)}
    <div class="row acts-of-form">
      <button type="submit" class="strong" ?disabled=${form.is_asking}>
        ${form.is_asking ? "Recording ..." : act_words}
      </button>
      <button type="button" @click=${leave}>Leave it</button>
    </div>
  </form>`;
}

/** The button that opened it. */
export const to_opener = ({ kind, of }: Pick<StockForm, "kind" | "of">) =>
  to_id(`shelf-open-${`${kind}-${of}`.replaceAll(/[^\w]+/g, "-")}`);
export const opener_id = (kind: StockActKind, of: string): string =>
  `shelf-open-${`${kind}-${of}`.replaceAll(/[^\w]+/g, "-")}`;

export const told_id = "shelf-told";

async function done({ form, act, names }: ActForm): Promise<void> {
  const wish = act();
  if (wish && (await record(form, wish))) return go_on(to_id(told_id));
  const said = form_of(form)?.complaint;
  if (said) go_on(to_id(names.includes(said.field) && !said.asks ? id_of(form, said.field) : `${form_id(form)}-said`));
}

/** A question, or what is wrong elsewhere than in one field. */
function beneath(one: ActForm): TemplateResult | typeof nothing {
  const { form, names } = one;
  const { complaint } = form;
  if (!complaint || (names.includes(complaint.field) && !complaint.asks)) return nothing;
  const value = complaint.choices?.find(({ confirmed }) => confirmed !== undefined)?.confirmed;
  const again = (settle: () => void) => () => {
    settle();
    void done(one);
  };
  return html`<div role="alert">
    <p class="alarm" id="${form_id(form)}-said" tabindex="-1">${days_in_words(wording(complaint))}</p>
    ${
      value === undefined
        ? nothing
        : html`<button type="button" class="answer" @click=${again(() => confirm(form, value))}>It is so</button>`
    }
    ${
      complaint.asks === "seen"
        ? html`<button type="button" class="answer" @click=${again(() => see(form, seen_now(state.stock.list, form)))}>
            Record it even so
          </button>`
        : nothing
    }
  </div>`;
}

/** What was recorded just now, where it was. */
export function told_of(of: string): TemplateResult | typeof nothing {
  const { told } = state.stock;
  if (told?.of !== of) return nothing;
  return html`<div class="told" id=${told_id} tabindex="-1">
    <div>${told.sentences.map((one) => html`<p>${days_in_words(one)}</p>`)}</div>
  </div>`;
}
