// The cavity's cut through its middle, from the solid the program made: what the side view draws.

export interface Solid {
  name: string;
  positions: Float32Array; // metres, y up, as glTF has it
  indices: Uint32Array;
  colour: [number, number, number, number]; // red, green, blue and how solid, linear as glTF has it
}

export type Loop = [number, number][]; // millimetres, across and up

export interface Outline {
  loops: Loop[];
  left: number;
  right: number;
  floor: number;
  brim: number;
  cut_y: number; // of the plane of the cut, in the mould's own frame
}

/** As SVG draws them, whose heights go down. */
export const path_of = (loops: Loop[], lift = 0): string =>
  loops.map((loop) => `M${loop.map(([x, y]) => `${x.toFixed(2)} ${(lift - y).toFixed(2)}`).join("L")}Z`).join("");

/** What is read of the JSON in a GLB. */
interface Gltf {
  accessors: { bufferView: number; count: number }[];
  bufferViews: { byteOffset?: number }[];
  materials: { pbrMetallicRoughness: { baseColorFactor: Solid["colour"] } }[];
  meshes: { name: string; primitives: [{ attributes: { POSITION: number }; indices: number; material: number }] }[];
}

/** The meshes of a GLB as the program writes it: glTF 2.0, one chunk each of JSON and numbers. */
export function solids_of(glb: ArrayBuffer): Solid[] {
  const json_bytes = new DataView(glb).getUint32(12, true);
  const gltf = JSON.parse(new TextDecoder().decode(new Uint8Array(glb, 20, json_bytes))) as Gltf;
  const start_of = (accessor: number) =>
    20 + json_bytes + 8 + (gltf.bufferViews[gltf.accessors[accessor].bufferView].byteOffset ?? 0);
  const count_of = (accessor: number) => gltf.accessors[accessor].count;
  return gltf.meshes.map(({ name, primitives: [{ attributes, indices, material }] }) => ({
    name,
    positions: new Float32Array(glb, start_of(attributes.POSITION), count_of(attributes.POSITION) * 3),
    indices: new Uint32Array(glb, start_of(indices), count_of(indices)),
    colour: gltf.materials[material].pbrMetallicRoughness.baseColorFactor,
  }));
}

type Segment = [[number, number], [number, number]];

/**
 * Where a plane meets the facets, in millimetres: the upright one at z = `cut`, or the level one at y = `cut`, seen
 * from above. A corner in the plane counts as behind it.
 */
function section(solid: Solid, cut: number, plane: "upright" | "level" = "upright"): Segment[] {
  const [along, across, side_of] = plane === "upright" ? [1, 2, 1] : [2, 1, -1];
  const segments: Segment[] = [];
  const { positions: p, indices } = solid;
  for (let i = 0; i < indices.length; i += 3) {
    const ends: [number, number][] = [];
    for (let side = 0; side < 3; ++side) {
      const a = 3 * indices[i + side];
      const b = 3 * indices[i + ((side + 1) % 3)];
      const za = p[a + across] - cut;
      const zb = p[b + across] - cut;
      if (za > 0 === zb > 0) continue;
      const t = za / (za - zb);
      const end: [number, number] = [
        1000 * (p[a] + t * (p[b] - p[a])),
        1000 * side_of * (p[a + along] + t * (p[b + along] - p[a + along])),
      ];
      if (za > 0) ends.push(end);
      else ends.unshift(end);
    }
    if (ends.length === 2) segments.push([ends[0], ends[1]]);
  }
  return segments;
}

function chained(segments: Segment[]): Loop[] {
  const name = ([x, y]: [number, number]) => `${x.toFixed(3)} ${y.toFixed(3)}`;
  const from = new Map<string, Segment[]>();
  for (const segment of segments) {
    const start = name(segment[0]);
    from.set(start, [...(from.get(start) ?? []), segment]);
  }
  const loops: Loop[] = [];
  for (const first of segments) {
    const loop: Loop = [];
    let next: Segment | undefined = from.get(name(first[0]))?.shift();
    while (next) {
      loop.push(next[0]);
      next = from.get(name(next[1]))?.shift();
    }
    if (loop.length > 2) loops.push(loop);
  }
  return loops;
}

export function outline_of(solid: Solid): Outline {
  const p = solid.positions;
  let [near, far, left, right, floor, brim] = [Infinity, -Infinity, Infinity, -Infinity, Infinity, -Infinity];
  for (let i = 0; i < p.length; i += 3) {
    left = Math.min(left, p[i]);
    right = Math.max(right, p[i]);
    floor = Math.min(floor, p[i + 1]);
    brim = Math.max(brim, p[i + 1]);
    near = Math.min(near, p[i + 2]);
    far = Math.max(far, p[i + 2]);
  }
  // A hair off the middle, where symmetric meshes have their corners.
  const cut = near + (far - near) * 0.50137;
  return {
    loops: chained(section(solid, cut)),
    left: 1000 * left,
    right: 1000 * right,
    floor: 1000 * floor,
    brim: 1000 * brim,
    cut_y: -1000 * cut,
  };
}

/** The cavity seen from above: its level cut just below the brim or, if it is wider there, halfway down. */
export function seen_from_above(solid: Solid, outline: Outline): Loop[] {
  const [floor, high] = [outline.floor / 1000, (outline.brim - outline.floor) / 1000];
  // A hair off the middle, where symmetric meshes have their corners.
  const cuts = [0.999, 0.50137].map((share) => chained(section(solid, floor + share * high, "level")));
  return cuts.reduce((widest, cut) => (reach(cut) > 1.001 * reach(widest) ? cut : widest));
}

function reach(loops: Loop[]): number {
  let [from, to] = [Infinity, -Infinity];
  for (const loop of loops) for (const [x] of loop) [from, to] = [Math.min(from, x), Math.max(to, x)];
  return Math.max(0, to - from);
}

/** The widest reach of the cut at a height. */
export function reach_at(outline: Outline, height: number): [number, number] {
  let [from, to] = [Infinity, -Infinity];
  for (const loop of outline.loops)
    loop.forEach(([x1, y1], i) => {
      const [x2, y2] = loop[(i + 1) % loop.length];
      if (Math.min(y1, y2) > height || Math.max(y1, y2) < height) return;
      for (const x of y1 === y2 ? [x1, x2] : [x1 + ((height - y1) / (y2 - y1)) * (x2 - x1)]) {
        from = Math.min(from, x);
        to = Math.max(to, x);
      }
    });
  return from <= to ? [from, to] : [outline.left, outline.right];
}
