// A mesh file dropped or chosen: sent with its progress shown, its unit and role asked, its faults listed.
import { html, nothing, type TemplateResult } from "lit";
import { post, Refused, send_mesh, type Document } from "./api";
import { choice } from "./field";
import { drawn, gauge_of } from "./measuring";
import { found } from "./new_mould";
import type { Outline } from "./outline";
import type { Gauge } from "./plan";
import { free_name } from "./saving";
import { changed, state } from "./state";

const longest = 200 * 2 ** 20; // what the program takes
const says_its_unit = /\.(3mf|gltf|glb)$/i;

interface Mesh {
  name: string;
  upload?: string;
  share: number;
  unit?: string;
  role?: string;
  up?: string;
  sizes: [string, string][]; // unit, and how large the mesh would be in it
  answer?: { gauge: Gauge; outline: Outline };
  complaint?: string;
  is_measuring: boolean;
  called: string;
  cavities: number;
}

let mesh: Mesh | undefined;

export function reset_mesh(): void {
  mesh = undefined;
}

async function take(file: File | undefined): Promise<void> {
  if (!file) return;
  mesh = { name: file.name, share: 0, sizes: [], is_measuring: false, called: file.name.replace(/\.\w+$/, ""), cavities: 1 };
  const mine = mesh;
  changed();
  if (file.size > longest) {
    mine.complaint = `${file.name} has ${Math.ceil(file.size / 2 ** 20)} MiB; 200 MiB is the most: export it with fewer facets`;
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
  of.is_measuring = true;
  of.complaint = of.answer = undefined;
  changed();
  const request = { file: of.upload!, unit: of.unit, role: of.role, up: of.up };
  try {
    const gauge = await gauge_of(request);
    of.answer = { gauge, outline: (await drawn(request)).outline };
    of.cavities = Math.max(of.cavities, 1);
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    of.sizes = of.unit ? of.sizes : sizes_in(error.complaint.problem);
    of.complaint = of.sizes.length && !of.unit ? undefined : `${error.complaint.problem}; ${error.complaint.remedy}`;
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

function set(change: Partial<Mesh>, again = true): void {
  Object.assign(mesh!, change);
  if (again) void measure(mesh!);
  else changed();
}

export function mesh_form(keep: (mould: Document) => Promise<void>): TemplateResult {
  const chosen = (event: Event) => {
    const input = event.target as HTMLInputElement;
    void take(input.files?.[0]);
    input.value = ""; // so that the same file, mended, may be chosen again
  };
  const dropped = (event: DragEvent) => {
    event.preventDefault();
    void take(event.dataTransfer?.files[0]);
  };
  return html`
    <div class="drop" @dragover=${(event: Event) => event.preventDefault()} @drop=${dropped}>
      <label for="mesh-file">Drop a mesh file here, or choose one: STL, OBJ, PLY, OFF, 3MF, glTF or GLB</label>
      <input id="mesh-file" type="file" accept=".stl,.obj,.ply,.off,.3mf,.gltf,.glb" @change=${chosen} />
    </div>
    ${mesh ? about(mesh, keep) : nothing}`;
}

function about(of: Mesh, keep: (mould: Document) => Promise<void>): TemplateResult {
  const sizes = of.sizes.length ? of.sizes : ([["mm", ""], ["cm", ""], ["in", ""]] as [string, string][]);
  const units = sizes.map(([unit, size]): [string, string] => [unit, size ? `${unit}: ${size} ${unit}` : unit]);
  return html`
    <h3>${of.name}</h3>
    ${of.share < 1 && !of.complaint
      ? html`<label for="sent">Sending, ${Math.round(100 * of.share)} %</label><progress id="sent" max="1" .value=${of.share}></progress>`
      : nothing}
    ${of.is_measuring ? html`<p role="status">Measuring ...</p>` : nothing}
    ${of.upload && !says_its_unit.test(of.name)
      ? html`<h4 id="unit-title">${of.unit ? "Its unit" : "Which size is it?"}</h4>${choice("Unit of the file's numbers", of.unit, units, (unit) => set({ unit }))}`
      : nothing}
    ${of.complaint ? html`<p class="alarm" role="alert">${of.complaint}</p>` : nothing}
    ${of.upload && (of.unit || of.answer)
      ? html`<h4>What it shows</h4>${choice("Role", of.role ?? of.answer?.gauge.role, [["cavity", "What is filled, or the piece"], ["body", "The mould with its pockets"], ["skin", "The mould's inner surface"]], (role) => set({ role }))}
          <h4>Which way is up</h4>${choice("Up", of.up ?? "", [["", "As it is"], ["+y", "+y"], ["-z", "-z"], ["-y", "-y"], ["+x", "+x"], ["-x", "-x"]], (up) => set({ up: up || undefined }))}`
      : nothing}
    ${of.answer ? html`${found(of.answer)} ${keeping(of, keep)}` : nothing}`;
}

function keeping(of: Mesh, keep: (mould: Document) => Promise<void>): TemplateResult {
  const { role } = of.answer!.gauge;
  const named = (event: Event) => set({ called: (event.target as HTMLInputElement).value }, false);
  const counted = (event: Event) => set({ cavities: Number((event.target as HTMLInputElement).value) || 1 }, false);
  return html`<div class="row">
      <div class="field"><label for="mesh-called">What you call it</label><input id="mesh-called" .value=${of.called} @input=${named} autocomplete="off" /></div>
      ${role === "cavity"
        ? html`<div class="field short"><label for="mesh-cavities">Cavities in one mould</label><input id="mesh-cavities" inputmode="numeric" .value=${String(of.cavities)} @input=${counted} autocomplete="off" /></div>`
        : nothing}
    </div>
    <button type="button" class="strong" ?disabled=${!of.called.trim()} @click=${() => keep_mesh(of, keep)}>Use this mould</button>`;
}

async function keep_mesh(of: Mesh, keep: (mould: Document) => Promise<void>): Promise<void> {
  const { role } = of.answer!.gauge;
  try {
    const as = free_mesh_name(of.name);
    const kept = await post<{ file: string }>("/api/keep", { upload: of.upload, as });
    const mould: Document = { schema: "brimwright.mould/1", name: of.called, mesh: { file: kept.file, role } };
    const about_mesh = mould.mesh as Document;
    if (of.unit) about_mesh.unit = of.unit;
    if (of.up) about_mesh.up = of.up;
    if (role === "cavity") mould.cavities = of.cavities;
    await keep(mould);
  } catch (error) {
    of.complaint = error instanceof Refused ? error.message : String(error);
    changed();
  }
}

function free_mesh_name(name: string): string {
  const plain = name.replaceAll(/[^\w.-]+/g, "_");
  const ending = /\.\w+$/.exec(plain)?.[0] ?? "";
  return free_name(plain.slice(0, -ending.length || undefined) + ".json", state.files!.meshes.map((one) => ({ file: one.file.replace(/\.\w+$/, ".json") }))).replace(/\.json$/, ending);
}
