package bolewalk.app.device

import android.annotation.SuppressLint
import android.graphics.SurfaceTexture
import android.hardware.camera2.CameraAccessException
import android.hardware.camera2.CameraCaptureSession
import android.hardware.camera2.CameraCharacteristics
import android.hardware.camera2.CameraDevice
import android.hardware.camera2.CameraManager
import android.os.Handler
import android.os.Looper
import android.util.Size
import android.view.Surface
import androidx.activity.ComponentActivity
import kotlin.math.abs

/** The live picture of the camera at the phone's back, by the framework's own camera service. */
class PhoneSight(private val activity: ComponentActivity, private val permission: Permission) : Sight {
    private val cameras = activity.getSystemService(CameraManager::class.java)

    override val lacking: Boolean get() = cameras?.let(::eyeAtTheBack) == null

    override fun watch(on: SurfaceTexture, hear: (Heard<SightPicture>) -> Unit): Listening {
        val eye = cameras?.let(::eyeAtTheBack) ?: return NoSight.watch(on, hear)
        return permission.whileGiven(refused = { hear(Heard.Refused) }) { show(cameras, eye, on, hear) }
    }

    @SuppressLint("MissingPermission")
    private fun show(cameras: CameraManager, eye: Eye, on: SurfaceTexture, hear: (Heard<SightPicture>) -> Unit): Listening {
        on.setDefaultBufferSize(eye.size.width, eye.size.height)
        val showing = Showing(eye, Surface(on), hear)
        try {
            cameras.openCamera(eye.id, showing, showing.screen)
        } catch (_: CameraAccessException) {
            hear(Heard.Off)
        } catch (_: SecurityException) {
            hear(Heard.Refused)
        } catch (_: IllegalArgumentException) {
            hear(Heard.Lacking)
        }
        return Listening { showing.end() }
    }
}

private class Eye(val id: String, val size: Size, val turnDeg: Int)

private fun eyeAtTheBack(cameras: CameraManager): Eye? = try {
    cameras.cameraIdList.firstNotNullOfOrNull { id -> eyeOf(id, cameras.getCameraCharacteristics(id)) }
} catch (_: CameraAccessException) {
    null
}

private fun eyeOf(id: String, about: CameraCharacteristics): Eye? {
    if (about[CameraCharacteristics.LENS_FACING] != CameraCharacteristics.LENS_FACING_BACK) return null
    val sizes = about[CameraCharacteristics.SCALER_STREAM_CONFIGURATION_MAP]?.getOutputSizes(SurfaceTexture::class.java)
    val size = sizes?.let { previewSize(it.toList()) } ?: return null
    return Eye(id, size, about[CameraCharacteristics.SENSOR_ORIENTATION] ?: 90)
}

/** Large enough to aim by, small enough for an old phone; of the sensor's own shape, so that nothing is cut off. */
internal fun previewSize(sizes: List<Size>): Size? {
    val fitting = sizes.filter { it.width <= WIDEST_PX }.ifEmpty { sizes }
    return fitting.minWithOrNull(compareBy({ abs(it.width * 3 - it.height * 4) > it.height / 10 }, { -it.width * it.height }))
}

private const val WIDEST_PX = 1440

/** One showing of the live picture: from the opening of the camera to its end. */
private class Showing(private val eye: Eye, private val surface: Surface, private val hear: (Heard<SightPicture>) -> Unit) : CameraDevice.StateCallback() {
    val screen = Handler(Looper.getMainLooper())
    private var ended = false
    private var camera: CameraDevice? = null

    fun end() {
        if (ended) return
        ended = true
        camera?.close()
        surface.release()
    }

    override fun onOpened(opened: CameraDevice) {
        if (ended) return opened.close()
        camera = opened
        trying(opened) {
            @Suppress("DEPRECATION") // its successor is newer than the oldest system
            opened.createCaptureSession(listOf(surface), Session(opened), screen)
        }
    }

    override fun onDisconnected(gone: CameraDevice) = lost(gone)

    override fun onError(broken: CameraDevice, error: Int) = lost(broken)

    /** Another app took it, or it broke. */
    private fun lost(gone: CameraDevice) {
        gone.close()
        if (!ended) hear(Heard.Off)
    }

    private fun trying(with: CameraDevice, act: () -> Unit) = try {
        act()
    } catch (_: CameraAccessException) {
        lost(with)
    } catch (_: IllegalStateException) {
        lost(with)
    } catch (_: IllegalArgumentException) {
        lost(with)
    }

    private inner class Session(private val opened: CameraDevice) : CameraCaptureSession.StateCallback() {
        override fun onConfigured(session: CameraCaptureSession) {
            if (ended) return
            trying(opened) {
                val request = opened.createCaptureRequest(CameraDevice.TEMPLATE_PREVIEW).apply { addTarget(surface) }
                session.setRepeatingRequest(request.build(), null, screen)
                hear(Heard.Value(SightPicture(eye.size.width, eye.size.height, eye.turnDeg)))
            }
        }

        override fun onConfigureFailed(session: CameraCaptureSession) = lost(opened)
    }
}
