/** Plain data a template may use: text, truth values, lists and records of the same. */
export type TemplateView =
  | string
  | number
  | boolean
  | null
  | undefined
  | readonly TemplateView[]
  | TemplateRecord;
export interface TemplateRecord {
  readonly [name: string]: TemplateView;
}
