// Hands a text or bytes to the browser as a file to keep.

export function saveFile(name: string, type: string, content: string | ArrayBuffer): void {
  const written = typeof content === 'string' ? `${type};charset=utf-8` : type;
  const address = URL.createObjectURL(new Blob([content], { type: written }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // The browser reads the blob when it is ready; the address is given back after that.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
