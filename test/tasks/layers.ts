/** Settings layers for tests, from the text of settings files as a user writes them. */
import { readJob } from '../../src/formats/job/read-job.ts';
import { readShop } from '../../src/formats/shop/shop.ts';
import type { Layers, ShopLayer, TypedSettings } from '../../src/tasks/settings/settings-layers.ts';

type Said = {
  readonly typed?: TypedSettings;
  /** Keys of a job file, and of shop files by the layer they are of. */
  readonly job?: object;
  readonly shop?: object;
  readonly project?: object;
  readonly user?: object;
};

const text = (kind: string, keys: object): string =>
  JSON.stringify({ schema: `leastcut/${kind}/1`, ...keys }, null, 2);

/** Each key of such a file stands on a line of its own, the first on line 3. */
export function layersOf({ typed = {}, job, ...shops }: Said): Layers {
  return {
    typed,
    job: job === undefined ? undefined : jobLayer(job),
    shops: (['shop', 'project', 'user'] as const).flatMap((origin) => {
      const keys = shops[origin];
      return keys === undefined ? [] : [shopLayer(origin, keys)];
    }),
  };
}

function jobLayer(keys: object): NonNullable<Layers['job']> {
  const { value, diagnostics } = readJob('job.json', text('job', keys));
  if (value === undefined) throw new Error(diagnostics.map(({ message }) => message).join('; '));
  return { file: value, folder: 'jobs' };
}

function shopLayer(origin: ShopLayer['origin'], keys: object): ShopLayer {
  const { value, diagnostics } = readShop(`${origin}.json`, text('shop', keys));
  if (value === undefined) throw new Error(diagnostics.map(({ message }) => message).join('; '));
  return { origin, file: value, folder: origin, named: origin === 'shop' ? 'flag' : null };
}

/** What was typed on the command line. */
export const flag = <T>(value: T, where = '--flag') => ({
  value,
  origin: 'flag' as const,
  where,
});
