// The page's rooms and their arrows: an import leads to the same room or to one further up this list, and no file
// leads back to itself.
import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, normalize } from "node:path";
import { fileURLToPath } from "node:url";

const uses = {
  program: [],
  documents: ["program"],
  figures: ["documents", "program"],
  drawings: ["documents", "program"],
  forms: ["figures", "drawings", "documents", "program"],
  recording: ["forms", "figures", "documents", "program"],
  stock: ["forms", "figures", "documents", "program"],
  weighing: ["recording", "forms", "figures", "documents", "program"],
  moulds: ["forms", "figures", "drawings", "documents", "program"],
  views: ["weighing", "recording", "stock", "moulds", "forms", "figures", "drawings", "documents", "program"],
};

const source = join(dirname(fileURLToPath(import.meta.url)), "source");
const faults = [];

const files = readdirSync(source, { recursive: true }).filter((name) => name.endsWith(".ts"));
const imports = new Map(
  files.map((file) => {
    const text = readFileSync(join(source, file), "utf8");
    const named = [...text.matchAll(/\b(?:from|import)\s*\(?\s*"(\.[^"]+)"/g)].map(([, name]) => name);
    return [file, named.map((name) => `${normalize(join(dirname(file), name))}.ts`)];
  }),
);

const room_of = (file) => file.split("/")[0];

for (const [file, used] of imports)
  for (const other of used) {
    const [from, to] = [room_of(file), room_of(other)];
    if (!imports.has(other)) faults.push(`${file}: there is no ${other}`);
    else if (!uses[from]) faults.push(`${file}: ${from} is not a room`);
    else if (from !== to && !uses[from].includes(to)) faults.push(`${file} uses ${other}: ${from} may not use ${to}`);
  }

/** The files that a file leads to, by way of others. */
function find_circles() {
  const done = new Set();
  const walk = (file, way) => {
    if (way.includes(file))
      return void faults.push(`a circle: ${[...way.slice(way.indexOf(file)), file].join(" -> ")}`);
    if (done.has(file)) return;
    for (const other of imports.get(file) ?? []) walk(other, [...way, file]);
    done.add(file);
  };
  for (const file of files) walk(file, []);
}

find_circles();
for (const fault of new Set(faults)) console.error(fault);
if (faults.length) process.exit(1);
