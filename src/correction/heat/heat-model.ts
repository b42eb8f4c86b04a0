import type { DegreesCelsius } from '../../base/units.ts';

/** What lies under the paint, as far as heat goes. */
export type Skin = 'steel' | 'aluminium' | 'plastic';

export const SKINS: readonly Skin[] = ['steel', 'aluminium', 'plastic'];

export type HeatModel = {
  /** Coefficient of friction between pad and paint. */
  readonly friction: number;
  /** Share of the heat that goes into the panel; the rest stays with pad and air. */
  readonly panelShare: number;
  /** Heat that warms the sheet by one kelvin, ρcδ, J/m²K. */
  readonly steelSheet: number;
  readonly aluminiumSheet: number;
  /** Thermal effusivity √(λρc), W√s/m²K. */
  readonly plasticEffusivity: number;
  /** To still air, W/m²K. */
  readonly cooling: number;
  /** Temperature of the panel before work. */
  readonly start: DegreesCelsius;
  /** Of the air around it, to which it cools. */
  readonly room: DegreesCelsius;
  readonly caution: DegreesCelsius;
  readonly stop: DegreesCelsius;
  readonly plasticStop: DegreesCelsius;
};
