// Values by name under one key of this device's memory. Another version of the app, or nobody, may have written what is there.

/** {} where nothing is of use. */
export function keptValues(key: string): Readonly<Record<string, unknown>> {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(key) ?? '{}');
    return typeof kept === 'object' && kept !== null ? (kept as Readonly<Record<string, unknown>>) : {};
  } catch {
    return {};
  }
}

/** False: this device has no room for it, or keeps nothing. */
export function keepValues(key: string, values: Readonly<Record<string, unknown>>): boolean {
  try {
    localStorage.setItem(key, JSON.stringify(values));
    return true;
  } catch {
    return false;
  }
}
