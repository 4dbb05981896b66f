// Takes a photo with the device's camera, or opens one that was taken before. The file is handed on and kept nowhere.

import type { ComponentChildren } from 'preact';
import { useTraceWords } from './trace-words.ts';

/** What every browser opens; where only these are asked for, telephones turn their own kinds into one of them. */
const ACCEPT = 'image/jpeg,image/png,image/webp';

export function PickPhoto({ isMain, pick }: { readonly isMain: boolean; readonly pick: (file: File) => void }) {
  const { say } = useTraceWords();
  return (
    <div className="row-of">
      <Pick look={isMain ? 'btn main trace-take' : 'btn trace-take'} withCamera pick={pick}>
        {say('trace.take')}
      </Pick>
      <Pick look={isMain ? 'btn main trace-choose' : 'btn trace-choose'} pick={pick}>
        {say(isMain ? 'trace.choose' : 'trace.again')}
      </Pick>
    </div>
  );
}

function Pick({
  look,
  withCamera = false,
  pick,
  children,
}: {
  readonly look: string;
  readonly withCamera?: boolean;
  readonly pick: (file: File) => void;
  readonly children: ComponentChildren;
}) {
  return (
    <label className={look}>
      {children}
      <input
        className="vh"
        type="file"
        accept={ACCEPT}
        {...(withCamera ? { capture: 'environment' } : {})}
        onChange={({ currentTarget }) => {
          const [file] = currentTarget.files ?? [];
          if (file !== undefined) pick(file);
          currentTarget.value = '';
        }}
      />
    </label>
  );
}
