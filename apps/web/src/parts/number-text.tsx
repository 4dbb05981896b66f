// A number with its unit: the unit lighter and smaller.

export function NumberText({ text }: { readonly text: string }) {
  const [, number = text, unit = ''] = /^([\d.,/ −–-]+?)\s?([^\d.,/ −–-].*)?$/.exec(text) ?? [];
  return (
    <>
      {number}
      {unit !== '' && <small> {unit}</small>}
    </>
  );
}
