// Over HTTP, to the server that the page came from.
import type { Answer, Transport } from "./transport";

// The key stands behind the # of the address. It is copied for this tab alone, so that a link
// within the page cannot lose it, and goes out of the address as soon as there is a view to put there.
const given_key = (): string | undefined => /^#([0-9a-f]{48})$/.exec(location.hash)?.[1];

let key = "";

function take_key(given: string): void {
  key = given;
  sessionStorage.setItem("key", given);
}

take_key(given_key() ?? sessionStorage.getItem("key") ?? "");

export const is_key_in_address = (): boolean => given_key() !== undefined;

/** The address of a new start, pasted into a tab that is open, changes no more than what stands behind its #. */
export function on_key(go_on: (is_new: boolean) => void): void {
  addEventListener("hashchange", () => {
    const given = given_key();
    if (!given) return;
    const is_new = given !== key;
    take_key(given);
    go_on(is_new);
  });
}

const nobody: Answer = { status: 0, body: "" };

const asked = (method: string, path: string, body?: string | Blob, signal?: AbortSignal): Promise<Response> =>
  fetch(path, { method, body, headers: { "X-Bench-Key": key }, signal });

async function fetched(...question: Parameters<typeof asked>): Promise<Answer> {
  try {
    const response = await asked(...question);
    return { status: response.status, body: await response.text() };
  } catch {
    return nobody;
  }
}

async function fetched_bytes(...question: Parameters<typeof asked>): Promise<Answer<Blob>> {
  try {
    const response = await asked(...question);
    return { status: response.status, body: await response.blob() };
  } catch {
    return { status: 0, body: new Blob() };
  }
}

/** fetch cannot tell how much of a body has gone. */
function sent(method: string, path: string, body: string | Blob, progress: (share: number) => void): Promise<Answer> {
  return new Promise((answered) => {
    const request = new XMLHttpRequest();
    request.open(method, path);
    request.setRequestHeader("X-Bench-Key", key);
    request.upload.onprogress = (event) => progress(event.total ? event.loaded / event.total : 0);
    request.onerror = () => answered(nobody);
    request.onload = () => answered({ status: request.status, body: request.responseText });
    request.send(body);
  });
}

export const http: Transport = {
  send: (method, path, body, progress, given_up) =>
    body !== undefined && progress ? sent(method, path, body, progress) : fetched(method, path, body, given_up),
  send_for_bytes: fetched_bytes,
};
