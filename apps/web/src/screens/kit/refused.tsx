// Why a change was not made, below the place where it was asked for.

export function Refused({ sentences }: { readonly sentences: readonly string[] }) {
  return (
    <div role="status" className="kit-answer">
      {sentences.map((sentence) => (
        <p key={sentence} className="oops">
          {sentence}
        </p>
      ))}
    </div>
  );
}
