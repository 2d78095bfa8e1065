// Makes source/program/answers.ts, the types of what the program answers, of their schemas in src/schemas.
// node answers.mjs [OUT]; `npm ci` first.
import { compile } from "json-schema-to-typescript";
import { readdir, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

const here = dirname(fileURLToPath(import.meta.url));
const out = process.argv[2] ?? join(here, "source/program/answers.ts");
const schemas = join(here, "../../schemas");

const names = (await readdir(schemas)).filter((name) => name.endsWith(".answer.schema.json")).sort();
const all = {
  title: "Answers",
  description: "What the program answers, by the schema that tells of it.",
  type: "object",
  properties: Object.fromEntries(names.map((name) => [name.replace(/\.answer.*/, ""), { $ref: name }])),
  additionalProperties: false,
};

const types = await compile(all, "Answers", {
  cwd: `${schemas}/`,
  // The schemas close their objects by what JSON Schema 2020-12 has for composed ones, which is not understood here.
  additionalProperties: false,
  ignoreMinAndMaxItems: true,
  bannerComment: "// What the program answers: made of src/schemas by answers.mjs, and not changed by hand.",
  style: { printWidth: 120 },
});
const twice = [...types.matchAll(/^export (?:type|interface) (\w+\d)\b/gm)].map(([, name]) => name);
if (twice.length) throw new Error(`two schemas mean different things by one title: ${twice.join(", ")}`);
await writeFile(out, types);
