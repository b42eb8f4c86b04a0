/** Friction heat: what it is reckoned from, and the temperatures to heed. */
import { degreesCelsius } from '../../base/units.ts';
import { number } from '../default.ts';

const PLASTIC =
  'polypropylene from memory: λ 0.2 W/mK, ρ 900 kg/m³, c 1900 J/kgK: the root of their product';

export const heatDefaults = {
  friction: number(0.4, '1', 'assumption', '', 'friction between pad and paint', [0.05, 1.5]),
  panelShare: number(
    0.6,
    '1',
    'derived',
    'a pad standing at 1100 rpm for 10 s warms steel by 13 K (workshop demonstration)',
    'share of the friction heat that goes into the panel',
    [0.05, 1],
  ),
  steelSheet: number(
    3077,
    'J/m²K',
    'derived',
    '0.8 mm of steel: 7850 kg/m³ at 490 J/kgK',
    'heat that warms a square metre of steel skin by one degree',
    [500, 20_000],
  ),
  aluminiumSheet: number(
    2187,
    'J/m²K',
    'derived',
    '0.9 mm of aluminium: 2700 kg/m³ at 900 J/kgK',
    'heat that warms a square metre of aluminium skin by one degree',
    [500, 20_000],
  ),
  plasticEffusivity: number(
    585,
    'W√s/m²K',
    'derived',
    PLASTIC,
    'how readily plastic takes heat up at its surface',
    [100, 3000],
  ),
  cooling: number(10, 'W/m²K', 'assumption', '', 'heat a warm panel gives to still air', [0, 100]),
  start: number(
    degreesCelsius(20),
    '°C',
    'assumption',
    '',
    'temperature of the panel before it is worked',
    [-10, 70],
  ),
  room: number(
    degreesCelsius(20),
    '°C',
    'assumption',
    '',
    'temperature of the air that a panel cools to',
    [-10, 50],
  ),
  caution: number(
    degreesCelsius(43),
    '°C',
    'common practice',
    '110 °F, a trade rule without a measurement behind it',
    'panel temperature from which to slow down and let it cool',
    [25, 80],
  ),
  stop: number(
    degreesCelsius(71),
    '°C',
    'common practice',
    '160 °F, a trade rule without a measurement behind it',
    'panel temperature at which to stop',
    [30, 120],
  ),
  plasticStop: number(
    degreesCelsius(80),
    '°C',
    'published',
    'Subaru service manual 2004: polypropylene deforms above 80 °C',
    'temperature that plastic must never come near',
    [30, 150],
  ),
} as const;
