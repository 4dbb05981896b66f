// Whether the browser draws in three dimensions.

/** False: show another way to build instead. */
export function drawsInSpace(): boolean {
  const context = document.createElement('canvas').getContext('webgl2');
  context?.getExtension('WEBGL_lose_context')?.loseContext();
  return context !== null;
}
