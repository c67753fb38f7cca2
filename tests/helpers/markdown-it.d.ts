// The package brings no types; these are the parts that the tests use.
declare module "markdown-it" {
  export interface Token {
    readonly type: string;
    readonly tag: string;
    readonly content: string;
    readonly children: readonly Token[] | null;
  }
  export default class MarkdownIt {
    constructor(options: { readonly html: boolean; readonly linkify: boolean });
    parse(text: string, env: object): Token[];
  }
}
