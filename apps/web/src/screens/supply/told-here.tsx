// Why the last tap here did nothing. The place stands before it is needed, so that it is read out.

import { useGame } from './game.ts';

export function ToldHere({ place }: { readonly place: string }) {
  const { told } = useGame();
  return (
    <span role="status" className="supply-told oops">
      {told?.place === place ? told.text : ''}
    </span>
  );
}
