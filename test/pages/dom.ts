/** The little of a browser's world that the checks inside a page use. */

export type Box = {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly width: number;
  readonly height: number;
};

export type PageElement = {
  readonly tagName: string;
  readonly className: unknown;
  readonly textContent: string | null;
  readonly parentElement: PageElement | null;
  readonly scrollWidth: number;
  readonly clientWidth: number;
  readonly childNodes: ArrayLike<{
    readonly nodeType: number;
    readonly textContent: string | null;
  }>;
  readonly attributes: ArrayLike<{ readonly name: string; readonly value: string }>;
  readonly getBoundingClientRect: () => Box;
  readonly closest: (selector: string) => PageElement | null;
  readonly querySelectorAll: (selector: string) => ArrayLike<PageElement>;
};

export type PageDocument = {
  readonly documentElement: PageElement & { readonly lang: string };
  readonly querySelectorAll: (selector: string) => ArrayLike<PageElement>;
};

export type PageStyle = Readonly<
  Record<
    'color' | 'backgroundColor' | 'fill' | 'stroke' | 'visibility' | 'fillOpacity' | 'clipPath',
    string
  >
>;
