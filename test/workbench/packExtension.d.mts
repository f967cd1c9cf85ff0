export function packExtension(path: string): string
