// Hands a text to the browser as a file to keep.

export function saveFile(name: string, type: string, text: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: `${type};charset=utf-8` }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // The browser reads the blob when it is ready; the address is given back after that.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
