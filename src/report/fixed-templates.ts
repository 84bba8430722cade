/**
 * Templates whose words stand in every review: what it is and is not, and what can hurt someone. No folder of templates
 * replaces them, and a document without their words is refused.
 */
export const fixedTemplates = ['fixed/deferral', 'sections/cautions'] as const;
