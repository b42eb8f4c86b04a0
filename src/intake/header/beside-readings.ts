/** Numbers that stand beside readings and belong to no panel. */
export const besideReadings =
  /^(?:index|idx|s\/?n|id|serial(?: no| number)?|temp(?:erature)?|humidity|battery|row|page|batch|limits?|target|nominal|spec(?:ification)?|tolerance|lower|upper|threshold|zero|(?:reference|calibration|test) (?:plate|foil|shim|block)|foil|shim|grenzwert|soll|limite|norm)\b/iu;
