package bolewalk.app.device

import android.content.Context
import java.io.File

/** Photos taken and files brought in lie aside until the field book has its own copy. What is a week old was forgotten. */
fun sweepLeftovers(context: Context, nowMs: Long = System.currentTimeMillis()) {
    for (folder in listOf("taken", "brought")) {
        File(context.filesDir, folder).listFiles().orEmpty().filter { nowMs - it.lastModified() > WEEK_MS }.forEach(File::delete)
    }
}

private const val WEEK_MS = 7L * 24 * 3600 * 1000
