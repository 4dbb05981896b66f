// What each way of counting gives for the two solids that schools differ about.

import type { CountingConvention, SolidId } from '@cairnmark/geometry';
import { CATALOGUE, makeSolid, schoolCounts } from '@cairnmark/geometry';
import { useForm } from './form.ts';
import { COUNTINGS, WAYS } from './ways.ts';

export function CountsTable({ chosen }: { readonly chosen: CountingConvention }) {
  const { words, say } = useForm();
  return (
    <table className="chal-counts">
      <caption className="lab">{say('challenge.counts')}</caption>
      <thead>
        <tr>
          <th scope="col">{say('challenge.counting-way')}</th>
          {ROUND.map((solid) => (
            <th key={solid} scope="col">
              {words.capital(words.names.solids[solid])}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {COUNTINGS.map((way) => (
          <tr key={way} className={way === chosen ? 'chosen' : undefined}>
            <th scope="row">{say(WAYS[way])}</th>
            {ROUND.map((solid) => (
              <td key={solid} data-of={words.capital(words.names.solids[solid])}>
                {words.listed(countsOf(solid, way).map(([thing, n]) => words.counted(thing, n)))}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

const ROUND = ['cone', 'cylinder'] as const satisfies readonly SolidId[];

function countsOf(solid: (typeof ROUND)[number], way: CountingConvention) {
  const made = makeSolid({ solid, sizes: CATALOGUE[solid].example });
  if (!made.ok) throw new RangeError(`the example of ${solid} makes no solid`);
  const { faces, edges, corners } = schoolCounts(made.value.counts, way);
  // Where every surface is a face already, none is told apart.
  const apart = way === 'flat-and-curved-apart' ? made.value.counts.curvedSurfaces : 0;
  return [
    ['faces', faces],
    ...(apart > 0 ? [['curved-surfaces', apart] as const] : []),
    ['edges', edges],
    ['corners', corners],
  ] as const;
}
