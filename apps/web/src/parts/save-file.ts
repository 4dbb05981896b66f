// Hands something to the browser as a file to keep, or to show in a tab of its own.

export function saveFile(name: string, type: string, content: string | ArrayBuffer): void {
  const written = typeof content === 'string' ? `${type};charset=utf-8` : type;
  const link = document.createElement('a');
  link.href = addressOf(new Blob([content], { type: written }));
  link.download = name;
  link.click();
}

/** In a tab of its own, where the browser shows and prints it. */
export function openFile(type: string, content: ArrayBuffer): void {
  window.open(addressOf(new Blob([content], { type })), '_blank', 'noopener');
}

/** The browser reads the blob when it is ready; the address is given back after that. */
function addressOf(blob: Blob): string {
  const address = URL.createObjectURL(blob);
  setTimeout(() => URL.revokeObjectURL(address), READ_MS);
  return address;
}

const READ_MS = 60_000;
