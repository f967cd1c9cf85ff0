export declare const benchFolder: string
export declare function ensurePeers(): string
