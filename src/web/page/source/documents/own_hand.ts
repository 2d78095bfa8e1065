// What this page itself wrote, renamed or removed: of that no other hand is blamed.
const versions = new Map<string, string | null | undefined>(); // undefined: whatever it is next

/** From now on, until it is known what has become of it. */
export const in_own_hand = (file: string): void => void versions.set(file, undefined);

export const left_own_hand = (file: string, version: string | null): void => void versions.set(file, version);

/** Whether it is of this version by what was done here. */
export function is_own_hand(file: string, version: string | null): boolean {
  if (!versions.has(file)) return false;
  const own = versions.get(file);
  if (own === undefined) versions.set(file, version);
  return own === undefined || own === version;
}
