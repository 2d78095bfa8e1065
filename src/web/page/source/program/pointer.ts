// JSON pointers (RFC 6901) into a document that is never changed in place: undo keeps the old one.
import type { Document, Json } from "./json";

function steps(pointer: string): string[] {
  return pointer
    .split("/")
    .slice(1)
    .map((step) => step.replaceAll("~1", "/").replaceAll("~0", "~"));
}

/** A key as a step of a pointer. */
export const escaped = (key: string): string => key.replaceAll("~", "~0").replaceAll("/", "~1");

export function at(document: Json | undefined, pointer: string): Json | undefined {
  let here: Json | undefined = document;
  for (const step of steps(pointer)) {
    if (here === null || typeof here !== "object") return undefined;
    here = (here as Record<string, Json>)[step];
  }
  return here;
}

/** The document with `value` at `pointer`; what is missing on the way is made, undefined removes. */
export function with_value(document: Document, pointer: string, value: Json | undefined): Document {
  return placed(document, steps(pointer), value) as Document;
}

function placed(here: Json | undefined, way: string[], value: Json | undefined): Json | undefined {
  const [step, ...rest] = way;
  if (step === undefined) return value;
  if (Array.isArray(here)) {
    const list = [...here];
    const inner = placed(list[Number(step)], rest, value);
    if (inner === undefined) list.splice(Number(step), 1);
    else list[Number(step)] = inner;
    return list;
  }
  const copy: Record<string, Json> = { ...((here as Record<string, Json>) ?? {}) };
  const inner = placed(copy[step], rest, value);
  if (inner === undefined) delete copy[step];
  else copy[step] = inner;
  return copy;
}
