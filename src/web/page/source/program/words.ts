// Names and numbers one after the other, as a sentence has them.

/** "1, 2 and 4". */
export function listed(words: readonly string[]): string {
  return words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} and ${words.at(-1)!}`;
}

/** As a sentence begins. */
export const begun_large = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
