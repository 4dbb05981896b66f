// Hands something to the browser as a file to keep.

export const saveFile = (name: string, type: string, text: string): void =>
  saveBlob(name, new Blob([text], { type: `${type};charset=utf-8` }));

export function saveBlob(name: string, blob: Blob): void {
  const link = document.createElement('a');
  link.href = addressOf(blob);
  link.download = name;
  link.click();
}

/** In a tab of its own, where the browser shows and prints it. */
export function openBlob(blob: Blob): void {
  window.open(addressOf(blob), '_blank', 'noopener');
}

/** The browser reads the blob when it is ready; the address is given back after that. */
function addressOf(blob: Blob): string {
  const address = URL.createObjectURL(blob);
  setTimeout(() => URL.revokeObjectURL(address), READ_MS);
  return address;
}

const READ_MS = 60_000;
