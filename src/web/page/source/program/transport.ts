// How the page reaches the program, whatever lies between them.

export interface Answer {
  status: number; // as HTTP counts them; 0 where nobody answers
  body: Blob;
}

export interface Transport {
  /** `progress` hears which share of the body has gone. Never throws: where nobody answers, the status is 0. */
  send(
    method: "GET" | "POST" | "PUT",
    path: string,
    body?: string | Blob,
    progress?: (share: number) => void,
  ): Promise<Answer>;
}
