/** What Parquet files are read with: a bundle of its own, for a log is seldom one. */
export { parquetText } from '../core/logs/reading/parquet/parquetText'
