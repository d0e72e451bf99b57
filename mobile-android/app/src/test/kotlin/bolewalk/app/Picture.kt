package bolewalk.app

import android.app.Activity
import android.graphics.Bitmap
import android.os.Handler
import android.os.Looper
import android.view.PixelCopy
import java.io.ByteArrayOutputStream
import java.io.DataOutputStream
import java.io.File
import java.nio.ByteBuffer
import java.util.zip.CRC32
import java.util.zip.Deflater
import java.util.zip.DeflaterOutputStream
import javax.imageio.ImageIO
import kotlin.math.abs
import org.robolectric.Shadows.shadowOf

/** The window as the toolkit draws it for the glass. */
fun pictureOf(activity: Activity): Picture {
    val view = activity.window.decorView
    val bitmap = Bitmap.createBitmap(view.width, view.height, Bitmap.Config.ARGB_8888)
    var result = -1
    PixelCopy.request(activity.window, bitmap, { result = it }, Handler(Looper.getMainLooper()))
    shadowOf(Looper.getMainLooper()).idle()
    check(result == PixelCopy.SUCCESS) { "no picture: $result" }
    return Picture(bitmap.width, bitmap.height, IntArray(bitmap.width * bitmap.height).also {
        bitmap.getPixels(it, 0, bitmap.width, 0, 0, bitmap.width, bitmap.height)
        bitmap.recycle()
    })
}

/** Pixels as 0xAARRGGBB, line by line. */
class Picture(val width: Int, val height: Int, val pixels: IntArray) {
    operator fun get(x: Int, y: Int): Int = pixels[y * width + x]

    /** Half as wide and high, in at most [colours] colours. */
    fun small(colours: Int = 24): Picture = halved().reduced(colours)

    private fun halved(): Picture {
        val (w, h) = width / 2 to height / 2
        return Picture(w, h, IntArray(w * h) { at ->
            val (x, y) = at % w * 2 to at / w * 2
            val four = intArrayOf(this[x, y], this[x + 1, y], this[x, y + 1], this[x + 1, y + 1])
            colour { shift -> four.sumOf { it shr shift and 0xFF } / 4 }
        })
    }

    /** Every pixel in the nearest of the colours that cover most of it. */
    private fun reduced(colours: Int): Picture {
        val coarse = IntArray(pixels.size) { at -> colour { shift -> (pixels[at] shr shift and 0xF8) * 255 / 0xF8 } }
        val counts = coarse.toList().groupingBy { it }.eachCount()
        val kept = counts.entries.sortedWith(compareBy({ -it.value }, { it.key })).take(colours).map { it.key }
        val nearest = counts.keys.associateWith { one -> kept.minBy { distance(one, it) } }
        return Picture(width, height, IntArray(pixels.size) { nearest.getValue(coarse[it]) })
    }

    /** How many pixels an eye would call different. */
    fun differs(other: Picture): Int {
        if (width != other.width || height != other.height) return maxOf(pixels.size, other.pixels.size)
        return pixels.indices.count { at -> CHANNELS.any { abs((pixels[at] shr it and 0xFF) - (other.pixels[at] shr it and 0xFF)) > SEEN } }
    }

    /** As PNG with a palette: every line as it is, packed as tightly as can be; half as large as the toolkit's own. */
    fun write(file: File) {
        val colours = pixels.distinct()
        val index = colours.withIndex().associate { (at, colour) -> colour to at.toByte() }
        val lines = ByteArrayOutputStream()
        DeflaterOutputStream(lines, Deflater(Deflater.BEST_COMPRESSION)).use { out ->
            for (y in 0 until height) out.write(ByteArray(width + 1) { if (it == 0) 0 else index.getValue(this[it - 1, y]) })
        }
        val palette = ByteArray(colours.size * CHANNELS.size) { (colours[it / CHANNELS.size] shr CHANNELS[it % CHANNELS.size]).toByte() }
        val head = ByteBuffer.allocate(13).putInt(width).putInt(height).put(byteArrayOf(8, 3, 0, 0, 0)).array()
        file.parentFile?.mkdirs()
        DataOutputStream(file.outputStream()).use { out ->
            out.writeLong(SIGNATURE)
            out.part("IHDR", head).part("PLTE", palette).part("IDAT", lines.toByteArray()).part("IEND", ByteArray(0))
        }
    }

    private fun DataOutputStream.part(name: String, data: ByteArray) = apply {
        val body = name.toByteArray() + data
        writeInt(data.size)
        write(body)
        writeInt(CRC32().apply { update(body) }.value.toInt())
    }

    private fun colour(of: (shift: Int) -> Int) = CHANNELS.fold(0xFF shl 24) { all, shift -> all or (of(shift) shl shift) }

    private fun distance(one: Int, other: Int) = CHANNELS.sumOf { shift -> ((one shr shift and 0xFF) - (other shr shift and 0xFF)).let { it * it } }

    companion object {
        /** A difference of a channel that an eye sees. */
        private const val SEEN = 64
        private const val SIGNATURE = -0x76afb1b8f2f5e5f6L
        private val CHANNELS = intArrayOf(16, 8, 0).toList()

        fun read(file: File): Picture {
            val image = ImageIO.read(file)
            return Picture(image.width, image.height, image.getRGB(0, 0, image.width, image.height, null, 0, image.width))
        }
    }
}
