// The door to the program: every figure on the page comes through here.

export type Json = null | boolean | number | string | Json[] | { [key: string]: Json };
export type Document = { [key: string]: Json };

export interface Complaint {
  file: string;
  field: string;
  problem: string;
  remedy: string;
  line: string;
}

export class Refused extends Error {
  constructor(
    readonly status: number,
    readonly complaint: Complaint,
    readonly answer: Record<string, unknown> = {},
  ) {
    super(complaint.line);
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
}

export interface Kept {
  file: string;
  version: string;
  text: string;
  shipped?: boolean;
}

// The key stands behind the # of the address. It is copied for this tab alone, so that a link
// within the page cannot lose it.
const key = (() => {
  const given = location.hash.slice(1);
  if (/^[0-9a-f]{48}$/.test(given)) sessionStorage.setItem("key", given);
  return sessionStorage.getItem("key") ?? given;
})();

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

async function refusal(response: Response): Promise<Refused> {
  try {
    const answer = (await response.json()) as { complaint: Complaint };
    return new Refused(response.status, answer.complaint, answer);
  } catch {
    return new Refused(response.status, { ...silent, line: `The program answered ${response.status}.` });
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
        return refused(new Refused(request.status, silent));
      }
      if (request.status === 200) done(answer as unknown as { file: string; name: string });
      else refused(new Refused(request.status, answer.complaint ?? silent));
    };
    request.send(file);
  });
}
