// What stands in a file: JSON, and of it what the page edits.

export type Json = null | boolean | number | string | Json[] | { [key: string]: Json };
export type Document = { [key: string]: Json };

/** As every file of the page's is written. */
export const text_of = (document: Document): string => `${JSON.stringify(document, null, 2)}\n`;

/** Nothing where the text is no JSON object. */
export function document_in(text: string | null): Document | undefined {
  try {
    const found = JSON.parse(text ?? "") as Json;
    return found !== null && typeof found === "object" && !Array.isArray(found) ? found : undefined;
  } catch {
    return undefined;
  }
}
