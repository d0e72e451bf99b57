package bolewalk.app.device

import android.content.ClipData
import android.content.ComponentName
import android.content.Context
import android.content.Intent
import android.net.Uri
import androidx.activity.ComponentActivity
import androidx.core.content.FileProvider
import java.io.File

/** Gives a file to another app, by a content address that only that app may read. */
class PhoneSharing(private val activity: ComponentActivity) : Sharing {
    override fun hand(path: String): Boolean {
        if (!File(path).isFile) return false
        val uri = contentUri(activity, path)
        val send = Intent(Intent.ACTION_SEND).setType(typeOf(path)).putExtra(Intent.EXTRA_STREAM, uri)
            .addFlags(Intent.FLAG_GRANT_READ_URI_PERMISSION)
        send.clipData = ClipData.newRawUri(null, uri)
        // This app takes packs too, but not its own.
        val own = arrayOf(ComponentName(activity, activity.javaClass))
        val choice = Intent.createChooser(send, null).putExtra(Intent.EXTRA_EXCLUDE_COMPONENTS, own)
        return activity.reaches { startActivity(choice) }
    }

    override fun open(path: String): Boolean {
        if (!File(path).isFile) return false
        // Not by a chooser, which says nothing where no app is there to be chosen.
        val view = Intent(Intent.ACTION_VIEW).setDataAndType(contentUri(activity, path), typeOf(path))
            .addFlags(Intent.FLAG_GRANT_READ_URI_PERMISSION)
        return activity.reaches { startActivity(view) }
    }
}

internal const val PACK_TYPE = "application/zip"

/** The type of a file that we write, as other apps know it. */
internal fun typeOf(path: String): String = when (path.substringAfterLast('.')) {
    "pdf" -> "application/pdf"
    "csv" -> "text/csv"
    "json" -> "application/json"
    "geojson" -> "application/geo+json"
    "gpkg" -> "application/geopackage+sqlite3"
    "kml" -> "application/vnd.google-earth.kml+xml"
    "png" -> "image/png"
    "jpg" -> "image/jpeg"
    "bolewalk-pack", "zip" -> PACK_TYPE
    else -> "application/octet-stream"
}

internal fun contentUri(context: Context, path: String): Uri =
    FileProvider.getUriForFile(context, context.packageName + ".files", File(path))
