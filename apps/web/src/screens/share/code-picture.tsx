// The code on the screen: black on white in the dark too, since readers look for that.

import { useMemo } from 'preact/hooks';
import { qrPicture } from './qr-picture.ts';

export function CodePicture({ text, label }: { readonly text: string; readonly label: string }) {
  const { size, path } = useMemo(() => qrPicture(text), [text]);
  return (
    <svg
      className="share-code"
      viewBox={`0 0 ${size} ${size}`}
      shape-rendering="crispEdges"
      role="img"
      aria-label={label}
    >
      <rect className="share-ground" width={size} height={size} />
      <path d={path} />
    </svg>
  );
}
