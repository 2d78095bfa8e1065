// The door to the program: every figure on the page comes through here.

export type Json = null | boolean | number | string | Json[] | { [key: string]: Json };
export type Document = { [key: string]: Json };

export interface Complaint {
  file: string;
  field: string;
  problem: string;
  remedy: string;
  line: string;
  is_fault?: boolean; // of the program, not of what was given
}

/** What is wrong and what to do, as far as either is said. */
export const wording = ({ problem, remedy }: Complaint): string => [problem, remedy].filter(Boolean).join("; ");

export class Refused extends Error {
  constructor(
    readonly status: number,
    readonly complaint: Complaint,
    readonly answer: Record<string, unknown> = {},
  ) {
    super(complaint.line);
  }

  /** Nobody answers, or too many ask at once: it is worth asking again by itself. */
  get may_pass(): boolean {
    return this.status === 0 || this.status === 503;
  }
}

export interface Listed {
  file: string;
  name: string;
  note: string;
  shipped: boolean;
}

export interface Files {
  folder: string;
  open: string | null;
  runs: Listed[];
  moulds: Listed[];
  formulas: Listed[];
  meshes: Listed[];
  cut?: { folder: string; looked_at: number }[]; // folders with more in them than is looked at
}

export interface Kept {
  file: string;
  version: string;
  text: string;
  shipped?: boolean;
}

// The key stands behind the # of the address. It is copied for this tab alone, so that a link
// within the page cannot lose it.
const given_key = (): string | undefined => /^#([0-9a-f]{48})$/.exec(location.hash)?.[1];

let key = "";

function take_key(given: string): void {
  key = given;
  sessionStorage.setItem("key", given);
}

take_key(given_key() ?? sessionStorage.getItem("key") ?? "");

/** The address of a new start, pasted into a tab that is open, changes no more than what stands behind its #. */
export function on_new_key(go_on: () => void): void {
  addEventListener("hashchange", () => {
    const given = given_key();
    if (!given || given === key) return;
    take_key(given);
    go_on();
  });
}

const silent: Complaint = {
  file: "",
  field: "",
  problem: "the program does not answer",
  remedy: "start brimwright again and open the address it prints; what you typed is kept here",
  line: "The program does not answer: start brimwright again and open the address it prints. What you typed is kept here.",
};

async function sent(path: string, init: RequestInit): Promise<Response> {
  let response: Response;
  try {
    response = await fetch(path, { ...init, headers: { "X-Bench-Key": key } });
  } catch {
    throw new Refused(0, silent);
  }
  if (response.ok) return response;
  throw await refusal(response);
}

const kept_here = "what you typed is kept here";

/** What the program could not say itself. */
function without_words(status: number): Complaint {
  const [problem, remedy] =
    status === 503
      ? ["the program has too much to do at once", `it is asked again in a moment; ${kept_here}`]
      : ["a fault of brimwright itself", `${kept_here}: change something, or ask again`];
  return { file: "", field: "", problem: problem!, remedy: remedy!, line: `${problem} (answer ${status}); ${remedy}.` };
}

function refused_with(status: number, answer: { complaint?: Complaint }): Refused {
  const own = without_words(status);
  const said = { ...own, ...answer.complaint };
  if (status >= 500) Object.assign(said, { is_fault: true, remedy: said.remedy || own.remedy });
  return new Refused(status, said, answer);
}

async function refusal(response: Response): Promise<Refused> {
  try {
    return refused_with(response.status, (await response.json()) as { complaint?: Complaint });
  } catch {
    return refused_with(response.status, {});
  }
}

export async function get<T>(path: string, signal?: AbortSignal): Promise<T> {
  return (await sent(path, { signal })).json() as Promise<T>;
}

/** A run, formula, mould or other file as it lies there. */
export const read_kept = (file: string): Promise<Kept> => get<Kept>(`/api/run?file=${encodeURIComponent(file)}`);

export async function post<T>(path: string, body: unknown): Promise<T> {
  return (await sent(path, { method: "POST", body: JSON.stringify(body) })).json() as Promise<T>;
}

export async function put<T>(path: string, body: unknown): Promise<T> {
  return (await sent(path, { method: "PUT", body: JSON.stringify(body) })).json() as Promise<T>;
}

export async function bytes(body: unknown): Promise<Blob> {
  return (await sent("/api/document", { method: "POST", body: JSON.stringify(body) })).blob();
}

/** Sends a mesh file, telling how much of it has gone: fetch cannot. */
export function send_mesh(file: File, gone: (share: number) => void): Promise<{ file: string; name: string }> {
  return new Promise((done, refused) => {
    const request = new XMLHttpRequest();
    request.open("POST", `/api/mesh?name=${encodeURIComponent(file.name)}`);
    request.setRequestHeader("X-Bench-Key", key);
    request.upload.onprogress = (event) => gone(event.total ? event.loaded / event.total : 0);
    request.onerror = () => refused(new Refused(0, silent));
    request.onload = () => {
      let answer: { complaint?: Complaint };
      try {
        answer = JSON.parse(request.responseText);
      } catch {
        return refused(request.status ? refused_with(request.status, {}) : new Refused(0, silent));
      }
      if (request.status === 200) done(answer as unknown as { file: string; name: string });
      else refused(refused_with(request.status, answer));
    };
    request.send(file);
  });
}
