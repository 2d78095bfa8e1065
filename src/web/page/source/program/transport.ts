// How the page reaches the program, whatever lies between them.

export interface Answer<Body = string> {
  status: number; // as HTTP counts them; 0 where nobody answers
  body: Body;
}

export interface Transport {
  /**
   * `progress` hears which share of the body has gone; what is `given_up` is not waited for. Never throws: where nobody
   * answers, the status is 0.
   */
  send(
    method: "GET" | "POST" | "PUT",
    path: string,
    body?: string | Blob,
    progress?: (share: number) => void,
    given_up?: AbortSignal,
  ): Promise<Answer>;

  /** The same for what is no text. */
  send_for_bytes(method: "GET" | "POST", path: string, body?: string): Promise<Answer<Blob>>;
}
