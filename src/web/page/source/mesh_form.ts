// A mesh file dropped or chosen: sent with its progress shown, its unit and role asked, its faults listed.
import { html, nothing, type TemplateResult } from "lit";
import { post, Refused, send_mesh, wording, type Document } from "./api";
import { choice } from "./form_parts";
import { gauge_of, look_into, type Found } from "./measuring";
import { draft, set as set_draft, take_draft } from "./mould_draft";
import { about_fields, name_field, name_taken, roles, says_its_unit, ups } from "./mould_form";
import { keep_mould, name_taken_by, type Taken } from "./mould_keeping";
import { found } from "./mould_views";
import { tell_more } from "./new_mould";
import { free_name } from "./saving";
import { changed, state } from "./state";

const longest = 200 * 2 ** 20; // what the program takes

interface Mesh {
  name: string;
  upload?: string;
  share: number;
  unit?: string;
  role?: string;
  up?: string;
  sizes: [string, string][]; // unit, and how large the mesh would be in it
  answer?: Found;
  complaint?: string;
  is_measuring: boolean;
  is_keeping?: boolean;
  asked: number; // so that a late answer to an earlier choice is not taken for one to this
}

let mesh: Mesh | undefined;

export function reset_mesh(): void {
  mesh = undefined;
}

async function take(file: File | undefined): Promise<void> {
  if (!file) return;
  mesh = { name: file.name, share: 0, sizes: [], is_measuring: false, asked: 0 };
  const mine = mesh;
  set_draft("/name", file.name.replace(/\.\w+$/, ""));
  changed();
  if (file.size > longest) {
    mine.complaint = `${file.name} has ${Math.ceil(
      file.size / 2 ** 20,
    )} MiB; 200 MiB is the most: export it with fewer facets`;
    return changed();
  }
  try {
    const sent = await send_mesh(file, (share) => {
      mine.share = share;
      changed();
    });
    mine.share = 1;
    mine.upload = sent.file;
    await measure(mine);
  } catch (error) {
    mine.complaint = error instanceof Refused ? error.message : String(error);
    changed();
  }
}

async function measure(of: Mesh): Promise<void> {
  const mine = ++of.asked;
  of.is_measuring = true;
  of.complaint = of.answer = undefined;
  changed();
  const request = { file: of.upload!, unit: of.unit, role: of.role, up: of.up };
  try {
    const answer = await look_into(request);
    if (mine !== of.asked) return;
    of.answer = answer;
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    if (mine !== of.asked) return;
    of.sizes = of.unit ? of.sizes : sizes_in(error.complaint.problem);
    of.complaint = of.sizes.length && !of.unit ? undefined : wording(error.complaint);
  }
  of.is_measuring = false;
  changed();
}

/** The program says how large the mesh would be in each unit: that makes the choice. */
function sizes_in(problem: string): [string, string][] {
  return [...problem.matchAll(/([\d.]+ x [\d.]+ x [\d.]+) (mm|cm|in)\b/g)]
    .slice(0, 3)
    .map(([, size, unit]) => [unit!, size!.replaceAll(" x ", " × ")]);
}

function set(change: Partial<Mesh>): void {
  Object.assign(mesh!, change);
  void measure(mesh!);
}

export function mesh_form(taken: Taken): TemplateResult {
  const chosen = (event: Event) => {
    const input = event.target as HTMLInputElement;
    void take(input.files?.[0]);
    input.value = ""; // so that the same file, mended, may be chosen again
  };
  const dropped = (event: DragEvent) => {
    event.preventDefault();
    void take(event.dataTransfer?.files[0]);
  };
  return html` <div class="drop" @dragover=${(event: Event) => event.preventDefault()} @drop=${dropped}>
      <label for="mesh-file">Drop a mesh file here, or choose one: STL, OBJ, PLY, OFF, 3MF, glTF or GLB</label>
      <input id="mesh-file" type="file" accept=".stl,.obj,.ply,.off,.3mf,.gltf,.glb" @change=${chosen} />
    </div>
    ${mesh ? about(mesh, taken) : nothing}`;
}

function about(of: Mesh, taken: Taken): TemplateResult {
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
            ${choice("Unit of the file's numbers", of.unit, units, (unit) => set({ unit }))}`
        : nothing
    }
    ${of.complaint ? html`<p class="alarm" role="alert">${of.complaint}</p>` : nothing}
    ${
      of.upload && (of.unit || of.answer)
        ? html`<h4>What it shows</h4>
            ${choice("Role", of.role ?? of.answer?.gauge.role, roles, (role) => set({ role }))}
            <h4>Which way is up</h4>
            ${choice("Up", of.up ?? "", ups, (up) => set({ up: up || undefined }))}`
        : nothing
    }
    ${of.answer ? html`${found(of.answer)} ${keeping(of, taken)}` : nothing}`;
}

const shows_count = (of: Mesh): boolean => of.answer!.gauge.role !== "cavity" || of.answer!.gauge.pockets.length > 1;

function keeping(of: Mesh, taken: Taken): TemplateResult {
  const name = String(draft.document.name ?? "").trim();
  const twin = name_taken_by(name);
  const is_ready = name && !twin && !of.is_keeping;
  return html`${name_field()} ${about_fields(shows_count(of))} ${name_taken(name, twin)}
    <div class="choice">
      <button type="button" class="strong" ?disabled=${!is_ready} @click=${() => keep_mesh(of, taken)}>
        Use this mould
      </button>
      <button type="button" ?disabled=${of.is_keeping} @click=${() => keep_mesh(of)}>Say more about it first</button>
    </div>
    ${of.is_keeping ? html`<p role="status">Keeping it ...</p>` : nothing}
    <p class="hint">
      More is: water weighed in it, measures as a second opinion, a mesh that leans or stands on a board.
    </p>`;
}

/** The mould at once or, without `taken` and wherever the program wants to know more, its whole form. */
async function keep_mesh(of: Mesh, taken?: Taken): Promise<void> {
  of.is_keeping = true;
  changed();
  try {
    const kept = await post<{ file: string }>("/api/keep", { upload: of.upload, as: free_mesh_name(of.name) });
    const mould = mould_of(of, kept.file);
    // Of hollows that differ in size it must be said which are filled; one alone is whole.
    if (!taken || (of.answer!.gauge.pockets.length > 1 && !(await is_whole(mould)))) return tell_more(mould);
    take_draft(mould, { version: null });
    await keep_mould(taken);
    if (draft.complaint) of.complaint = draft.complaint.line;
  } catch (error) {
    of.complaint = error instanceof Refused ? error.message : String(error);
  }
  of.is_keeping = false;
  changed();
}

function mould_of(of: Mesh, file: string): Document {
  const mesh: Document = { file, role: of.answer!.gauge.role };
  if (of.unit) mesh.unit = of.unit;
  if (of.up) mesh.up = of.up;
  const { cavities, ...rest } = draft.document;
  return { ...rest, ...(shows_count(of) || cavities === undefined ? {} : { cavities }), mesh };
}

async function is_whole(mould: Document): Promise<boolean> {
  try {
    await gauge_of({ file: "new.mould.json", mould });
    return true;
  } catch (error) {
    if (error instanceof Refused && error.status === 422) return false;
    throw error;
  }
}

function free_mesh_name(name: string): string {
  const plain = name.replaceAll(/[^\w.-]+/g, "_");
  const ending = /\.\w+$/.exec(plain)?.[0] ?? "";
  return free_name(
    plain.slice(0, -ending.length || undefined) + ".json",
    state.files!.meshes.map((one) => ({ file: one.file.replace(/\.\w+$/, ".json") })),
  ).replace(/\.json$/, ending);
}
