/** What panels are taken to be made of where nobody said it, and what a gauge must be to read it. */
import { groupBy } from '../../base/group-by.ts';
import { panelNames } from '../../film/template/side-names.ts';
import type { Panel } from '../../film/template/template.ts';
import type { Assumption } from '../settings/assumption.ts';
import type { SaidSubstrates } from './said-substrates.ts';

type Substrates = SaidSubstrates['substrates'];

/** `panels` are all of the template, `read` those of them that were read. */
export function materialAssumptions(
  panels: readonly Panel[],
  read: readonly Panel[],
  substrates: Substrates,
): readonly Assumption[] {
  const unsaid = panels.filter(({ id }) => !substrates.has(id));
  return [
    ...byTemplate(unsaid, unsaid.length === panels.length),
    ...readByEddyCurrent(read, substrates),
  ];
}

/** `both mirrors plastic, other panels steel (template)`: read or not, where it is the template that says so. */
function byTemplate(panels: readonly Panel[], isAll: boolean): readonly Assumption[] {
  const [most, ...others] = [...groupBy(panels, ({ substrate }) => substrate)].sort(
    ([, one], [, other]) => other.length - one.length,
  );
  if (most === undefined) return [];
  const rest = others.map(([substrate, of]) => `${panelNames(of).join(', ')} ${substrate}, `);
  const which = isAll && rest.length === 0 ? 'panels' : 'other panels';
  const text = `${rest.join('')}${which} ${most[0]} (template)`;
  return [{ code: 'materials', text, origin: 'built-in' }];
}

/** A magnetic gauge shows nothing on aluminium, or something that is no film. The readings may say it. */
function readByEddyCurrent(read: readonly Panel[], substrates: Substrates): readonly Assumption[] {
  const panels = read.filter(
    ({ id, substrate }) => substrate === 'aluminium' && substrates.get(id)?.inReadings !== true,
  );
  if (panels.length === 0) return [];
  const text = `${panelNames(panels).join(', ')} (aluminium) read by the eddy-current side of the gauge: a magnetic one cannot, and then nothing may go there`;
  return [{ code: 'eddy-current', text, origin: 'built-in' }];
}
