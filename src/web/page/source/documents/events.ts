// What happens to open files, told to whoever acts on it: so that a file knows nothing of figures, nor of other files.
import type { Document } from "../program/json";
import type { OpenFile } from "./file_types";

interface Events {
  edited: { file: OpenFile; before: Document };
  /** Just before another text takes the place of what is typed. */
  giving_way: { file: OpenFile };
  /** Another text stands there now. */
  gave_way: { file: OpenFile };
  /** Another hand deleted it, and it is to stay so: it lies open no more. */
  left_deleted: { file: OpenFile };
  /** What is typed must be written, though nothing was typed just now. */
  unwritten: { file: OpenFile };
  /** It is asked which text is to stay. */
  conflict: { file: OpenFile };
  /** Its file has another name, or names others anew. */
  renamed: { file: OpenFile; renamed: (document: Document) => Document };
  /** A file that came with the program has become one of her own, and names its files anew. */
  copied: { file: OpenFile; from: string; renamed: (document: Document) => Document };
}

const listeners: { [Event in keyof Events]?: ((what: Events[Event]) => void)[] } = {};

export function on<Event extends keyof Events>(event: Event, act: (what: Events[Event]) => void): void {
  const list: ((what: Events[Event]) => void)[] = (listeners[event] ??= []);
  list.push(act);
}

export function tell<Event extends keyof Events>(event: Event, what: Events[Event]): void {
  for (const act of listeners[event] ?? []) act(what);
}
