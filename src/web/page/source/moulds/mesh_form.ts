// A mesh file dropped or chosen: sent with its progress shown, its unit and role asked, its faults listed.
import { html, nothing, type TemplateResult } from "lit";
import { look_into } from "../documents/measuring";
import { begin_draft, draft, mould_now, set as set_in_draft } from "../documents/mould_draft";
import { free_name } from "../documents/names";
import { amend, state, update, type MeshDraft } from "../documents/state";
import { choice } from "../forms/form_parts";
import type { Inspection } from "../program/answers";
import { ask_gauge, inspect_mesh, keep_mesh, Refused, send_mesh, wording, type Complaint } from "../program/api";
import type { Document } from "../program/json";
import { trimmed } from "../program/numbers";
import { about_fields, name_field, name_taken, roles, says_its_unit, ups } from "./mould_form";
import { keep_mould, name_taken_by, type Taken } from "./mould_keeping";
import { found } from "./mould_views";

const longest = 200 * 2 ** 20; // what the program takes

/** Goes on with a mould of which more is to be said. */
type TellMore = (mould: Document) => void;

async function take(file: File | undefined): Promise<void> {
  if (!file) return;
  const mesh: MeshDraft = { name: file.name, share: 0, sizes: [], is_measuring: false, questions: 0 };
  update({ mesh });
  set_in_draft("/name", file.name.replace(/\.\w+$/, ""));
  if (file.size > longest) {
    const large = `${file.name} has ${Math.ceil(file.size / 2 ** 20)} MiB`;
    return amend(mesh, { complaint: `${large}; 200 MiB is the most: export it with fewer facets` });
  }
  try {
    const sent = await send_mesh(file, (share) => amend(mesh, { share }));
    amend(mesh, { share: 1, upload: sent.file });
    await measure(mesh);
  } catch (error) {
    amend(mesh, { complaint: error instanceof Refused ? error.message : String(error) });
  }
}

async function measure(mesh: MeshDraft): Promise<void> {
  const questions = mesh.questions + 1;
  amend(mesh, { questions, is_measuring: true, complaint: undefined, answer: undefined, inspection: undefined });
  const { upload, unit, role, up } = mesh;
  try {
    const answer = await look_into({ file: upload!, unit, role, up });
    if (questions === mesh.questions) amend(mesh, { answer, is_measuring: false });
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    if (questions !== mesh.questions) return;
    const sizes = unit ? mesh.sizes : sizes_of(error.complaint);
    const complaint = sizes.length && !unit ? undefined : wording(error.complaint);
    amend(mesh, { sizes, complaint, is_measuring: false });
  }
}

async function inspect(mesh: MeshDraft): Promise<void> {
  const { questions, upload, unit, up } = mesh;
  try {
    const inspection = await inspect_mesh({ file: upload!, unit, up });
    if (questions === mesh.questions) amend(mesh, { inspection });
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    if (questions === mesh.questions) amend(mesh, { complaint: wording(error.complaint) });
  }
}

function defects(of: MeshDraft): TemplateResult {
  if (!of.inspection)
    return html`<button type="button" @click=${() => void inspect(of)}>List every defect of the mesh</button>`;
  return html`<h4>Every defect of the mesh</h4>
    ${
      of.inspection.defects.length
        ? html`<ul>
            ${of.inspection.defects.map(defect)}
          </ul>`
        : html`<p>None.</p>`
    }`;
}

const defect = ({ text }: Inspection["defects"][number]): TemplateResult => html`<li>${text}</li>`;

/** How large the mesh would be in each unit: that makes the choice. */
function sizes_of({ asks, choices = [] }: Complaint): [string, string][] {
  if (asks !== "unit") return [];
  const words = (size: number[] | undefined) => (size ?? []).map((one) => trimmed(one, 2)).join(" × ");
  return choices.flatMap(({ unit, size }): [string, string][] => (unit ? [[unit, words(size)]] : []));
}

function set(mesh: MeshDraft, change: Partial<MeshDraft>): void {
  amend(mesh, change);
  void measure(mesh);
}

export function mesh_form(taken: Taken, tell_more: TellMore): TemplateResult {
  const chosen = (event: Event) => {
    const input = event.target as HTMLInputElement;
    void take(input.files?.[0]);
    input.value = ""; // so that the same file, mended, may be chosen again
  };
  const dropped = (event: DragEvent) => {
    event.preventDefault();
    void take(event.dataTransfer?.files[0]);
  };
  const [kinds, endings] = state.files?.imports_meshes
    ? ["STL, OBJ, PLY, OFF, 3MF, glTF or GLB", ".stl,.obj,.ply,.off,.3mf,.gltf,.glb"]
    : ["STL, the binary kind (for others brimwright-import is missing beside the program)", ".stl"];
  return html` <div class="drop" @dragover=${(event: Event) => event.preventDefault()} @drop=${dropped}>
      <label for="mesh-file">Drop a mesh file here, or choose one: ${kinds}</label>
      <input id="mesh-file" type="file" accept=${endings} @change=${chosen} />
    </div>
    ${state.mesh ? about(state.mesh, taken, tell_more) : nothing}`;
}

function about(of: MeshDraft, taken: Taken, tell_more: TellMore): TemplateResult {
  const sizes = of.sizes.length
    ? of.sizes
    : ([
        ["mm", ""],
        ["cm", ""],
        ["in", ""],
      ] as [string, string][]);
  const units = sizes.map(([unit, size]): [string, string] => [unit, size ? `${unit}: ${size} ${unit}` : unit]);
  return html` <h3>${of.name}</h3>
    ${
      of.share < 1 && !of.complaint
        ? html`<label for="sent">Sending, ${Math.round(100 * of.share)} %</label
            ><progress id="sent" max="1" .value=${of.share}></progress>`
        : nothing
    }
    ${of.is_measuring ? html`<p role="status">Measuring ...</p>` : nothing}
    ${
      of.upload && !says_its_unit.test(of.name)
        ? html`<h4 id="unit-title">${of.unit ? "Its unit" : "Which size is it?"}</h4>
            ${choice("Unit of the file's numbers", of.unit, units, (unit) => set(of, { unit }))}`
        : nothing
    }
    ${of.complaint ? html`<p class="alarm" role="alert">${of.complaint}</p>` : nothing}
    ${of.upload && !of.is_measuring && (of.complaint || of.answer) ? defects(of) : nothing}
    ${
      of.upload && (of.unit || of.answer)
        ? html`<h4>What it shows</h4>
            ${choice("Role", of.role ?? of.answer?.gauge.role, roles, (role) => set(of, { role }))}
            <h4>Which way is up</h4>
            ${choice("Up", of.up ?? "", ups, (up) => set(of, { up: up || undefined }))}`
        : nothing
    }
    ${of.answer ? html`${found(of.answer)} ${keeping(of, taken, tell_more)}` : nothing}`;
}

const shows_count = (of: MeshDraft): boolean =>
  of.answer!.gauge.role !== "cavity" || of.answer!.gauge.pockets.length > 1;

function keeping(of: MeshDraft, taken: Taken, tell_more: TellMore): TemplateResult {
  const name = String(mould_now().name ?? "").trim();
  const twin = name_taken_by(name);
  const is_ready = name && !twin && !of.is_keeping;
  return html`${name_field()} ${about_fields(shows_count(of))} ${name_taken(name, twin)}
    <div class="choice">
      <button type="button" class="strong" ?disabled=${!is_ready} @click=${() => keep(of, tell_more, taken)}>
        Use this mould
      </button>
      <button type="button" ?disabled=${of.is_keeping} @click=${() => keep(of, tell_more)}>More settings</button>
    </div>
    ${of.is_keeping ? html`<p role="status">Keeping it ...</p>` : nothing}
    <p class="hint">More is: water weighed in it, measures as a check, a mesh that leans or stands on a board.</p>`;
}

/** The mould at once or, without `taken` and wherever the program wants to know more, its whole form. */
async function keep(mesh: MeshDraft, tell_more: TellMore, taken?: Taken): Promise<void> {
  amend(mesh, { is_keeping: true });
  try {
    const mould = mould_of(mesh, await keep_mesh(mesh.upload!, free_mesh_name(mesh.name)));
    // Of hollows that differ in size it must be said which are filled; one alone is whole.
    if (!taken || (mesh.answer!.gauge.pockets.length > 1 && !(await is_whole(mould)))) return tell_more(mould);
    begin_draft(mould, "mesh", draft().title);
    await keep_mould(taken);
    amend(mesh, { complaint: state.mould?.complaint?.line });
  } catch (error) {
    amend(mesh, { complaint: error instanceof Refused ? error.message : String(error) });
  }
  amend(mesh, { is_keeping: false });
}

function mould_of(of: MeshDraft, file: string): Document {
  const mesh: Document = { file, role: of.answer!.gauge.role };
  if (of.unit) mesh.unit = of.unit;
  if (of.up) mesh.up = of.up;
  const { cavities, ...rest } = mould_now();
  return { ...rest, ...(shows_count(of) || cavities === undefined ? {} : { cavities }), mesh };
}

async function is_whole(mould: Document): Promise<boolean> {
  try {
    await ask_gauge({ file: "new.mould.json", mould });
    return true;
  } catch (error) {
    if (error instanceof Refused && error.status === 422) return false;
    throw error;
  }
}

const free_mesh_name = (name: string): string =>
  free_name(name.replaceAll(/[^\w.-]+/g, "_"), state.files?.meshes ?? []);
