// The library `detent/core` as its users see it: what it exports, and every type that is reached from there.
// Made from src/core/index.ts by `npm run docs`; a change here is a change of the interface (CHANGELOG.md, versions).

/**
 * A notebook as plain data for scripts: every entry with its state resolved and its numbers worked out. Names carry the
 * units, so that nothing has to be looked up; a number that is not known is left out, never null or zero.
 */
export interface Exported {
    /** Of this shape; a field may be added without another number. */
    version: 1;
    machine?: string;
    entries: ExportedEntry[];
}

export interface ExportedEntry {
    /** The entry's id where it is unique, else its place as `#3`. */
    id: string;
    /** The entry it comes from, whether written or by order; absent for one that comes from none. */
    from?: string;
    /** As it is written. */
    date?: string;
    settings: ExportedSettings;
    derived: ExportedDerived;
    ride?: ExportedRide;
}

/**
 * Something the notebook says about itself. The editor, the grid and the command line show the same findings.
 * `code` is a speaking name such as `legs-differ`; `range` is where it stands in the text.
 */
export interface Finding {
    code: string;
    severity: Severity;
    message: string;
    range: Range;
    place?: Place;
    fixes?: Fix[];
}

export interface LogAnalysis {
    /** Takes the next bytes of the file; false where there is no need of more. The bytes may be overwritten afterwards. */
    feed: (chunk: Uint8Array) => boolean;
    end: () => LogReport;
}

/**
 * Everything about the statistics that could be otherwise. The usual values are our own choice where no source stands
 * beside them; all of them are told with the numbers.
 */
export interface LogOptions {
    percentiles: readonly number[];
    /** Widths of the bins of the position's histograms. */
    positionBinMm: number;
    positionBinPct: number;
    /** The velocity's fit takes the odd number of points nearest this time, and never fewer than `fewestPoints`. */
    fitS: number;
    fewestPoints: number;
    fitOrder: number;
    speedBinMmPerS: number;
    speedToMmPerS: number;
    speedLimits: SpeedLimits;
    bottoming: StopLimits;
    topping: StopLimits;
    /** With a brake's column that holds a pressure: from so much on, unless the mapping names a value. */
    brakeOnBar: number;
    brakeAtLeastS: number;
    /** Without one: the front further in than the rear by so much, in % of their travels. */
    braking: BrakingLimits;
    /** A swing of less is no turning point. */
    swingMm: number;
    /** Into so many pieces the log is cut for a drawing of the whole, an even number; 0 for no drawing. */
    tracePieces: number;
}

/** What a log said: statistics, or the problem that kept them from being made; and notes on all that was mended or left out. */
export interface LogReport {
    dialect?: Dialect;
    mapping?: LoggerMapping;
    /** Where the mapping was not given. */
    proposed?: ProposedMapping;
    statistics?: LogStatistics;
    notes: string[];
    problem?: LogProblem;
}

/** What is asked of a log. All of it may be left out. */
export interface LogRequest {
    /** Which column is what; proposed from headings and numbers where it is left out. */
    mapping?: LoggerMapping;
    facts?: Partial<Record<EndName, EndFacts>>;
    /** The machine with both ends fully extended, for the attitude. */
    geometry?: PlaneGeometry;
    options?: Partial<LogOptions>;
    window?: Window;
}

export interface LogStatistics {
    sampling: Sampling;
    window?: {
        fromS?: number;
        toS?: number;
        lap?: number;
    };
    front?: EndStatistics;
    rear?: EndStatistics;
    frontRear?: FrontRearStatistics;
    attitude?: AttitudeStatistics;
    braking?: BrakingStatistics;
    laps?: LapStatistics[];
}

/** Which column of a log is what, as `machine.logger` of a notebook says it. A column by its heading, or its place from 1. */
export interface LoggerMapping {
    time?: {
        column: ColumnName;
        unit?: TimeUnit;
    };
    /** Samples per s, where no column holds the time. */
    rateHz?: number;
    front?: ChannelMapping;
    rear?: ChannelMapping;
    brake?: {
        column: ColumnName;
        on?: number;
    };
    lap?: {
        column: ColumnName;
    };
}

/** A notebook that was read, to be handed on to the functions here; what it is made of is the program's own. */
export interface Notebook {
    readonly [read]: true;
    readonly text: string;
    /** What is wrong with its syntax; such a notebook says no more than that. */
    readonly broken?: Finding;
}

/**
 * Statistics of a logger's file from its bytes as they come, in memory that does not grow with the file.
 *
 * Nothing is guessed without a word: what was found, taken for what, mended or left out stands in the report.
 * @example
 * const analysis = analyseLog({ mapping, facts: { front: { travelMm: 120 } } })
 * for (const chunk of chunks) analysis.feed(chunk)
 * const { statistics, notes, problem } = analysis.end()
 */
export declare function analyseLog(request?: LogRequest): LogAnalysis;

/**
 * Applies changes to the text they were computed for.
 *
 * @example applyChanges('3 out', [{ start: 0, end: 1, text: '4' }]) // '4 out'
 */
export declare function applyChanges(text: string, changes: readonly TextChange[]): string;

/**
 * What the rules find, in the order of the text.
 *
 * @param severities how loudly rules speak by their code, where the notebook itself does not say
 */
export declare function checkNotebook(notebook: Notebook, severities?: Severities): Finding[];

/** Every entry with its state resolved and its numbers worked out; names carry their units. */
export declare function exportNotebook(notebook: Notebook): Exported;

/** Line and column of an offset, both counted from 0. */
export declare function lineAndColumn(text: string, offset: number): {
    line: number;
    column: number;
};

/** What the notebook knows of either end, for `analyseLog`: travel in mm. */
export declare function logFactsOf(notebook: Notebook): NonNullable<LogRequest['facts']>;

/** Rake, trail and wheelbase where the notebook has them, for `analyseLog`. */
export declare function logGeometryOf(notebook: Notebook): LogRequest['geometry'];

/** Which column of its logs is what, as `machine.logger` says; absent where it does not. For `analyseLog`. */
export declare function loggerOf(notebook: Notebook): LoggerMapping | undefined;

/** Reads the text of a notebook. Never throws: what is wrong with it, `checkNotebook` tells. */
export declare function readNotebook(text: string): Notebook;

export declare const usualOptions: LogOptions;

// What those are made of; not to be imported by name.

/** How the machine lay: 5 % of the samples below, half, 95 % below. */
interface AttitudeStatistics {
    samples: number;
    /** Nose up above zero, against the machine with both ends fully extended. */
    pitchDeg: Spread;
    rakeDeg: Spread;
    trailMm: Spread;
}

interface BrakingEvent {
    atS: number;
    forS: number;
    deepestFrontMm: number;
    meanFrontMm: number;
    /** How far the rear came out, where it is logged: its least position. */
    leastRearMm?: number;
}

/** When braking begins and ends: a signal at `on` or above begins it, below `off` ends it; shorter ones do not count. */
interface BrakingLimits {
    on: number;
    off: number;
    atLeastS: number;
}

interface BrakingStatistics {
    /** `brake` from a brake's own column; `ends` guessed from the fork being much further in than the rear. */
    from: 'brake' | 'ends';
    limits: BrakingLimits;
    count: number;
    totalS: number;
    /** Medians over all events that are kept. */
    deepestFrontMm: number;
    meanFrontMm: number;
    events: BrakingEvent[];
}

/** travel in mm = ± scale · (reading − offset), with − where the reading rises as the suspension extends. */
interface ChannelMapping {
    column: ColumnName;
    /** A length, `%` of the travel, or the sensor's own such as `V`, which needs a scale. mm when left out. */
    unit?: string;
    /** mm for one of the column's unit. */
    scale?: number;
    /** What the column reads with the end fully extended, in its own unit. */
    offset?: number;
    /** What a rising reading means. */
    direction?: 'compression' | 'extension';
    /** Where it is measured. At the damper, the leverage of the machine makes wheel travel of it. */
    at?: 'wheel' | 'damper';
}

/** A column by its heading; one without a heading is named after its place: `column 3`. */
interface Column {
    name: string;
    /** As written in the unit line, or in brackets behind the heading. */
    unit?: string;
}

type ColumnName = string | number;

/** One free swinging out after a push or a bump. */
interface Decay {
    atS: number;
    swings: number;
    dampingRatio: number;
    dampedHz: number;
    naturalHz: number;
}

interface DecayStatistics {
    count: number;
    /** Medians over all that were found. */
    dampingRatio: number;
    naturalHz: number;
    /** The middle half of the ratios lies between these. */
    dampingRatioFrom: number;
    dampingRatioTo: number;
    found: Decay[];
}

type DecimalMark = '.' | ',';

/** How a table of numbers is written, as found in its first lines. */
interface Dialect {
    separator: Separator;
    decimal: DecimalMark;
    /** Whether fields stand in quotes, so that separators and line ends may stand inside them. */
    quoted: boolean;
    /** The file is one of Parquet; what else is told here is how its columns were written as text. */
    parquet?: true;
    /** Columns of a Parquet file that are left out: they hold lists or structures. */
    unread?: readonly string[];
    columns: readonly Column[];
    /** Lines of the file, from 1; absent where there is no such line. */
    headerLine?: number;
    unitLine?: number;
    /** Where the numbers begin: the line, from 1, and the place of its first byte. */
    dataLine: number;
    dataOffset: number;
}

/** The two ends of a machine. */
type End = 'front' | 'rear';

/** What has to be known about an end to make positions of its readings. */
interface EndFacts {
    travelMm?: number;
    leverage?: LeverageFacts;
}

type EndName = 'front' | 'rear';

interface EndStatistics {
    column: string;
    travelMm?: number;
    position: PositionStatistics;
    bottoming?: StopStatistics;
    topping?: StopStatistics;
    velocity?: SpeedStatistics;
    freeDecays?: DecayStatistics;
    packing?: PackingStatistics;
    spectrum?: SpectrumStatistics;
    /** Only where a drawing was asked for. */
    trace?: LogTrace;
}

/** Derived numbers by group and name, each with its standard uncertainty beside it as `<name>_u` where it has one. */
interface ExportedDerived {
    front: Numbers;
    rear: Numbers;
    geometry: Numbers;
    bounce: Record<End, Numbers>;
}

/** Where an adjuster stands: a count in its own unit, and the direction it is counted in; absent where it has none. */
interface ExportedPosition {
    value: number;
    unit: string;
    counted?: 'out' | 'in';
}

/** What the ride told, as far as a script can reckon with it: travel used as noted, and the log's path beside the notebook. */
interface ExportedRide {
    front_travel_used_mm?: number;
    rear_travel_used_mm?: number;
    /** Only a path that stays in the notebook's folder. */
    log?: string;
}

/** By adjuster: a position, or one for each leg where it has legs. */
type ExportedSettings = Record<string, ExportedPosition | Partial<Record<Leg, ExportedPosition>>>;

/** A repair that a finding carries: what it does, in words, and the changes that do it. */
interface Fix {
    title: string;
    changes: TextChange[];
}

/** The front against the rear, in % of their travels. */
interface FrontRearStatistics {
    samples: number;
    /** 1 where both go in together, -1 where one goes in as the other comes out. */
    correlation: number;
    /** How much further into its travel the front is, on average. */
    frontAheadPct: number;
    /** Shares of the samples in % by front (rows, from extended) and rear (columns), in squares of `binPct`. */
    binPct: number;
    sharesPct: number[][];
}

/** Shares of the samples in bins of equal width, in %. Bin i goes from `from` + i · `bin` up to and without the next. */
interface Histogram {
    bin: number;
    from: number;
    sharesPct: number[];
}

interface LapEnd {
    medianMm: number;
    meanMm: number;
    deepestMm: number;
    bottomed?: number;
    sharesPct?: SpeedStatistics['sharesPct'];
}

interface LapStatistics {
    lap: number;
    fromS: number;
    forS: number;
    ends: Partial<Record<'front' | 'rear', LapEnd>>;
}

type Leg = 'left' | 'right';

/** How a shock is driven: one ratio for the whole travel, or what was measured, wheel travel and shock travel in mm. */
type LeverageFacts = {
    motionRatio: number;
} | {
    table: readonly Point[];
};

/** Why a log, or a part of it, cannot be worked with: what is wrong and what to do, and the line of the file it was seen in. */
interface LogProblem {
    /** Counted from 1, as editors do. */
    line?: number;
    message: string;
}

/** The whole of a log in so many pieces of equal length: how far in and how far out an end was in each; NaN where nothing is known. */
interface LogTrace {
    fromS: number;
    stepS: number;
    leastMm: Float32Array;
    mostMm: Float32Array;
}

type Numbers = Record<string, number>;

/** What counts as packing down. */
interface PackingLimits {
    fewestHits: number;
    /** From the deepest place of one hit to that of the next, at most. */
    withinS: number;
    /** A hit goes in by so much, and a train drifts by so much, at least. */
    hitMm: number;
    driftMm: number;
}

interface PackingStatistics {
    trains: number;
    packed: number;
    /** The furthest drift of the packed ones. */
    worstMm: number;
    limits: PackingLimits;
    /** The packed ones. */
    places: Train[];
}

/** The cell of the notebook that a finding is about: an entry's key and a row's key. */
interface Place {
    entry?: string;
    row?: string;
}

/** A machine as its figures stand: on level ground, both wheels in one plane. */
interface PlaneGeometry {
    rakeDeg: number;
    /** Front axle to steering axis, square to it. */
    offsetMm: number;
    wheelbaseMm: number;
    frontRadiusMm: number;
    rearRadiusMm: number;
}

type Point = readonly [x: number, y: number];

/** Positions of one end, mm at the wheel from full extension (at the front along the fork), and in % of its travel where that is known. */
interface PositionStatistics {
    samples: number;
    /** Exact where the readings lie on a decimal grid, else to the resolution. */
    exact: boolean;
    resolutionMm: number;
    percentileMethod: 'linear';
    percentilesMm: Record<string, number>;
    percentilesPct?: Record<string, number>;
    /** Dynamic sag, both ways of telling it. */
    medianMm: number;
    meanMm: number;
    medianPct?: number;
    meanPct?: number;
    deepestMm: number;
    deepestPct?: number;
    deepestAtS: number;
    leastMm: number;
    leastAtS: number;
    histogramMm: Histogram;
    histogramPct?: Histogram;
}

/** A mapping as a proposal: what was taken for what and why, and what only a person can know. */
interface ProposedMapping {
    mapping: LoggerMapping;
    because: string[];
    /** To be looked at before any number is believed. */
    unsure: string[];
}

/** A stretch of a text, as offsets in UTF-16 code units; `end` is exclusive. */
interface Range {
    start: number;
    end: number;
}

/** How the samples were taken and what was made of them, to stand beside every number. */
interface Sampling {
    rows: number;
    rateHz: number;
    /** From the first sample used to the last. */
    fromS: number;
    toS: number;
    /** Samples drawn between rows that were not at their time. */
    interpolated: number;
    gaps: number;
    gapS: number;
    velocityFit: {
        points: number;
        order: number;
        spanS: number;
    };
    /** Attitude, braking, decays and spectrum are taken from averages of so many samples. */
    averagedBy: number;
}

type Separator = ',' | ';' | '\t';

/** How loudly rules are to speak, by code, where neither the rule nor the notebook decides. */
type Severities = ReadonlyMap<string, Severity | 'off'>;

type Severity = 'error' | 'warning' | 'info';

/** Power spectral density of a position, one-sided, from 0 Hz in equal steps. */
interface SpectrumStatistics {
    stepHz: number;
    densityMm2PerHz: number[];
    /** The highest peak above 0.5 Hz, where there is one. */
    peakHz?: number;
    segments: number;
    segmentS: number;
}

/** Limits between low and high speed, mm/s, above zero both. Measured values lie on either side of them, never on both. */
interface SpeedLimits {
    compressionMmPerS: number;
    reboundMmPerS: number;
}

/** Velocities of one end. Compression is above zero, rebound below. */
interface SpeedStatistics {
    samples: number;
    fastestCompressionMmPerS: number;
    fastestReboundMmPerS: number;
    rmsMmPerS: number;
    percentilesMmPerS: Record<string, number>;
    lowHighLimitMmPerS: {
        compression: number;
        rebound: number;
    };
    /** Shares of the samples, in %; they add up to 100 with `still`. */
    sharesPct: {
        highRebound: number;
        lowRebound: number;
        still: number;
        lowCompression: number;
        highCompression: number;
    };
    /** Of equal bins, symmetric about zero. */
    histogram: Histogram & {
        belowPct: number;
        abovePct: number;
    };
    resolutionMmPerS: number;
}

interface Spread {
    p5: number;
    p50: number;
    p95: number;
}

/** What counts as being on a stop, mm from the end of the travel, and how far away from there it has to get to be off it. */
interface StopLimits {
    withinMm: number;
    leaveMm: number;
}

/** Once on a stop, from its first sample there to its last. */
interface StopPlace {
    atS: number;
    forS: number;
    /** The place furthest into the stop, mm from full extension. */
    extremeMm: number;
}

interface StopStatistics extends StopLimits {
    times: number;
    totalS: number;
    /** The first ones; `times` counts them all. */
    places: StopPlace[];
}

/** Replace the text between `start` and `end` by `text`. Lists of changes never overlap and all count in the old text. */
interface TextChange extends Range {
    text: string;
}

type TimeUnit = 's' | 'ms' | 'us' | 'clock';

/** A run of quick hits: whether the end came out less far from hit to hit. */
interface Train {
    /** When its first hit was deepest, and how long until its last was. */
    atS: number;
    forS: number;
    hits: number;
    /** From where the first hit began to the least deep place where one of the later half did, deeper above zero. */
    driftMm: number;
    packed: boolean;
}

/** Which part of a log is wanted: times in s since its first row, or the rows of one lap. */
interface Window {
    fromS?: number;
    toS?: number;
    lap?: number;
}

declare const read: unique symbol;

export {}
