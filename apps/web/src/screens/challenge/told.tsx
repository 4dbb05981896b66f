// Why a change was refused, beside the place where it was asked for. The class is as it was.

import type { FileIssue } from '@cairnmark/formats';
import { useForm } from './form.ts';

export function Told({ faults }: { readonly faults: readonly FileIssue[] }) {
  const { words, say } = useForm();
  // They stand at their place.
  const sentences = [...new Set(faults.map((fault) => words.capital(words.issue({ ...fault, path: [] }))))];
  return (
    <div role="status" className="chal-told">
      {sentences.map((sentence) => (
        <p key={sentence} className="oops">
          {sentence}
        </p>
      ))}
      {sentences.length > 0 && <p className="mut">{say('challenge.kept-as-it-was')}</p>}
    </div>
  );
}
