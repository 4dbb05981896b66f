// Forgets what this device remembers of a class beside the class itself: what the Board showed, watches that ran, a PIN.
// Whatever part of the app wrote it, it stands under a key of ours and names the class.

export function forgetClass(classId: string): void {
  try {
    for (const key of ourKeys()) forgetIn(key, classId);
  } catch {
    // A device that keeps nothing has nothing to forget.
  }
}

const OURS = 'cairnmark.';

const ourKeys = (): string[] =>
  Array.from({ length: localStorage.length }, (_, k) => localStorage.key(k) ?? '').filter((key) =>
    key.startsWith(OURS),
  );

function forgetIn(key: string, classId: string): void {
  const text = localStorage.getItem(key);
  const kept = text === null ? null : parsed(text);
  if (typeof kept !== 'object' || kept === null) return;
  if ((kept as { readonly classId?: unknown }).classId === classId) {
    // What belongs to it stands beside it, under a longer key.
    for (const one of ourKeys().filter((other) => other === key || other.startsWith(`${key}.`))) {
      localStorage.removeItem(one);
    }
    return;
  }
  const others = Object.entries(kept).filter(([name]) => name !== classId && !name.startsWith(`${classId}/`));
  if (others.length < Object.keys(kept).length) localStorage.setItem(key, JSON.stringify(Object.fromEntries(others)));
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}
