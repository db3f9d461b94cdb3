/** Lengths as people type them and read them off a tape, in metres inside. */
export type Units = "us" | "metric";

const M_PER_FT = 0.3048;
const M_PER_IN = 0.0254;
const LONGEST_M = 5000;
const PARTS: Readonly<Record<string, number>> = {
  "⅛": 1 / 8, "¼": 1 / 4, "⅜": 3 / 8, "½": 1 / 2, "⅝": 5 / 8, "¾": 3 / 4, "⅞": 7 / 8,
};
const EIGHTHS = ["", "⅛", "¼", "⅜", "½", "⅝", "¾", "⅞"];
const METRIC: Readonly<Record<string, number>> = { m: 1, cm: 0.01, mm: 0.001 };
const NUMBER = String.raw`\d+(?:[.,]\d+)?|[.,]\d+`;
const FEET = String.raw`'|′|’|ft\b\.?|feet\b|foot\b|ft(?=\d)|pies?\b`;
const INCHES = String.raw`"|″|”|''|in\b\.?|inch\b|inches\b|pulg(?:adas?)?\b\.?`;
const SHARE = String.raw`\d+\s*/\s*\d+|[⅛¼⅜½⅝¾⅞]`;

/** Metres of a typed length: `12' 6 1/2"`, `12ft6`, `6½ in`, `3.81 m`, `381 cm`; null for none.
 *
 * A bare number is feet in US units, metres in metric ones. Nothing below zero.
 */
export function lengthOf(text: string, units: Units): number | null {
  const told = text.trim().toLowerCase().replace(/\s+/g, " ");
  const found = metric(told) ?? feet(told) ?? bare(told, units);
  return found !== null && Number.isFinite(found) && found >= 0 && found <= LONGEST_M ? found : null;
}

function number(text: string): number {
  return Number(text.replace(",", "."));
}

function metric(told: string): number | null {
  const found = new RegExp(`^(${NUMBER}) ?(mm|cm|m)\\.?$`).exec(told);
  return found ? number(found[1] as string) * (METRIC[found[2] as string] as number) : null;
}

function bare(told: string, units: Units): number | null {
  const found = new RegExp(`^(${NUMBER})$`).exec(told);
  return found ? number(found[1] as string) * (units === "us" ? M_PER_FT : 1) : null;
}

function feet(told: string): number | null {
  const whole = new RegExp(
    `^(?:(${NUMBER}) ?(?:${FEET}))?(?: ?-? ?(?:(${NUMBER})?(?: ?-? ?(${SHARE}))? ?(${INCHES})?))?$`,
  ).exec(told);
  if (!whole) return null;
  const [, ft, inches, share, sign] = whole;
  if (ft === undefined && sign === undefined) return null;
  if (ft === undefined && inches === undefined && share === undefined) return null;
  // Without the sign of inches only what follows feet is inches: 12ft6.
  return number(ft ?? "0") * M_PER_FT + (number(inches ?? "0") + part(share)) * M_PER_IN;
}

function part(share: string | undefined): number {
  if (share === undefined) return 0;
  const known = PARTS[share];
  if (known !== undefined) return known;
  const [above, below] = share.split("/").map(Number) as [number, number];
  return below === 0 ? Number.NaN : above / below;
}

/** A length as a tape reads: feet, inches and eighths, or metres to the millimetre. */
export function lengthTold(length_m: number, units: Units): string {
  if (units === "metric") return `${length_m.toFixed(3).replace(/0$/, "")} m`;
  const eighths = Math.round((length_m / M_PER_IN) * 8);
  const sign = eighths < 0 ? "−" : "";
  const inches = Math.floor(Math.abs(eighths) / 8);
  const over = EIGHTHS[Math.abs(eighths) % 8] as string;
  const rest = inches % 12;
  return `${sign}${Math.floor(inches / 12)}′ ${over && rest === 0 ? over : `${rest}${over}`}″`;
}

export function areaTold(area_m2: number, units: Units): string {
  return units === "us" ? `${Math.round(area_m2 / M_PER_FT ** 2).toLocaleString("en-US")} ft²` : `${area_m2.toFixed(1)} m²`;
}

/** A step of the arrow keys: an inch or a centimetre; large: a foot or ten centimetres. */
export function stepOf(units: Units, large: boolean): number {
  if (units === "us") return large ? M_PER_FT : M_PER_IN;
  return large ? 0.1 : 0.01;
}

/** To what a free point is rounded: half an inch or a centimetre. */
export function gridOf(units: Units): number {
  return units === "us" ? M_PER_IN / 2 : 0.01;
}
