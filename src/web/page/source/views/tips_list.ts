// The piping tips that are there: files of her own, to change what stands in them, and those that are built in.
import { html, nothing, type TemplateResult } from "lit";
import { held_now, make_held, open_held } from "../documents/beside";
import { tips_kind } from "../documents/kinds";
import { shipped_tips } from "../documents/tips";
import { add_tip, new_tip, tips_in_file } from "../forms/held_rows";
import { trimmed } from "../program/numbers";
import { held_list, new_held } from "./held_list";
import { list_head, tried } from "./lists";
import { removed_of } from "./removed";

export function tips_list(): TemplateResult {
  const held = held_now();
  return html`${list_head("Tips")}
    <section aria-labelledby="own-tips">
      <h2 id="own-tips">Your own tips</h2>
      ${held_list(tips_kind, "Each file is named by the studio, or by the runs that use its tips.", (file) => open_held(tips_kind, file))}
      ${held ? tips_in_file(held) : nothing}
      ${new_held({
        label: "A new tip of your own",
        add: held ? `Add it to ${held.file}` : "Begin a file with it",
        act: (name) => (held ? Promise.resolve(add_tip(name)) : make_held(tips_kind, new_tip(name))),
        tried,
      })}
    </section>
    <section aria-labelledby="built-in-tips">
      <h2 id="built-in-tips">Built-in tips</h2>
      <table class="figures">
        <thead>
          <tr>
            <th scope="col">Tip</th>
            <th scope="col">Opening</th>
            <th scope="col">Area, mm²</th>
          </tr>
        </thead>
        <tbody>
          ${shipped_tips().map(
            ({ name, opening, area_mm2 }) =>
              html`<tr>
                <th scope="row">${name}</th>
                <td>${opening ?? ""}</td>
                <td>${area_mm2 === undefined ? "" : trimmed(area_mm2, 1)}</td>
              </tr>`,
          )}
        </tbody>
      </table>
    </section>
    ${removed_of("tips")}`;
}
