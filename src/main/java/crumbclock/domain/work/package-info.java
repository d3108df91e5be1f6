/** Steps of cakes and batches with all their needs, in concrete minutes and millimetres: what methods and orders become. */
package crumbclock.domain.work;
