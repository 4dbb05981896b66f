// What is wrong, and what to do about it; read out when it comes up.

export function Told({ title, lines }: { readonly title?: string; readonly lines: readonly string[] }) {
  return (
    <div role="status">
      {title !== undefined && <h2>{title}</h2>}
      <p className="badbox">
        <b>{lines[0]}</b> {lines.slice(1).join(' ')}
      </p>
    </div>
  );
}
