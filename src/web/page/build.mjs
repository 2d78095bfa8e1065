// Bundles the page: the same sources and the same lock file give the same bytes.
// node build.mjs [OUT]; `npm ci` first. Building and running the program needs none of this.
import { build } from "esbuild";
import { mkdir, readdir, readFile, rm, writeFile } from "node:fs/promises";
import { basename, dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

const here = dirname(fileURLToPath(import.meta.url));
const out = process.argv[2] ?? join(here, "bundle");

await mkdir(out, { recursive: true });
for (const file of await readdir(out)) await rm(join(out, file));

const { metafile } = await build({
  absWorkingDir: here,
  entryPoints: { page: "source/views/start.ts" },
  bundle: true,
  splitting: true,
  format: "esm",
  target: "es2022",
  minify: true,
  // The notices of all libraries stand in licences.txt, whole.
  legalComments: "none",
  metafile: true,
  // The server knows a file by its name, and takes names without folders.
  chunkNames: "[name]-[hash]",
  outdir: out,
});
await build({
  absWorkingDir: here,
  entryPoints: { page: "source/page.css" },
  bundle: true,
  minify: true,
  outdir: out,
});

// All that is run at the start is fetched at once, not as the browser finds out what needs what.
const outputs = Object.entries(metafile.outputs).map(([name, made]) => [basename(name), made]);
const entry = outputs.find(([name]) => name === "page.js")[1].imports.map(({ path }) => basename(path));
const at_start = new Set(
  outputs.flatMap(([name, { imports }]) =>
    entry.includes(name)
      ? [name, ...imports.filter(({ kind }) => kind === "import-statement").map(({ path }) => basename(path))]
      : [],
  ),
);
const preloads = [...at_start].map((name) => `<link rel="modulepreload" href="/${name}" />\n  `).join("");
const index = await readFile(join(here, "source/index.html"), "utf8");
await writeFile(join(out, "index.html"), index.replace('<script type="module"', `${preloads}$&`));

// Of each library that is in the bundle, its licence.
const used = new Set();
for (const input of Object.keys(metafile.inputs)) {
  const found = /node_modules\/((?:@[^/]+\/)?[^/]+)\//.exec(input);
  if (found) used.add(found[1]);
}
let licences = "The page holds these libraries, each under its own licence.\n";
for (const name of [...used].sort()) {
  const folder = join(here, "node_modules", name);
  const { version, license } = JSON.parse(await readFile(join(folder, "package.json"), "utf8"));
  const file = (await readdir(folder)).find((one) => /^licen[cs]e/i.test(one));
  if (!file) throw new Error(`${name} has no licence file`);
  licences += `\n${"-".repeat(78)}\n${name} ${version} (${license})\n\n${await readFile(join(folder, file), "utf8")}`;
}
await writeFile(join(out, "licences.txt"), licences);
