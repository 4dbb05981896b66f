// Something to do at a time of the clock of the day. A timer alone counts the time that the device is awake: one that slept
// would be late, and one that is early would never be asked again.

/** ms. A quarter of a second is not seen as late. */
const LOOK_MS = 250;

/** Does it once, as soon as the time has come. Gives what calls it off. */
export function whenTime(atMs: number, act: () => void): () => void {
  const look = (): void => {
    if (Date.now() < atMs) return;
    clearInterval(timer);
    act();
  };
  const timer = setInterval(look, LOOK_MS);
  return () => clearInterval(timer);
}
