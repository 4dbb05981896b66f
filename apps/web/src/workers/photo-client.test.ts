import { expect, it } from 'vitest';
import { photoClient } from './photo-client.ts';

it('once the door is closed, questions that wait start no fresh worker', async () => {
  const ended: boolean[] = [];
  const { client, end } = photoClient(() => {
    const k = ended.push(false) - 1;
    const worker = {
      postMessage: (): void => undefined,
      terminate: (): void => {
        ended[k] = true;
      },
    };
    return worker as unknown as Worker;
  });
  const [above, side] = (['above', 'side'] as const).map((view) => client.ask(view, 'area', [], () => undefined));
  end();
  expect(await above).toBeNull();
  await expect(side).rejects.toThrow('closed');
  expect(ended).toEqual([true]);
});
